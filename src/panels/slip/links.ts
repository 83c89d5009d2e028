import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { words } from '../../words/words.ts';

const address = /\bhttps:\/\/[^\s<>"'`{}|\\^]+/gu;
const most = 5;

/**
 * Addresses in a text that may be opened: https alone, and none that hides its host behind a name
 * and password.
 */
export function addressesIn(text: string): readonly URL[] {
  const found = text.match(address) ?? [];
  return found.slice(0, most).flatMap((one) => {
    const text = one.replace(/[.,;:!?)\]]+$/u, '');
    if (!URL.canParse(text)) return [];
    const url = new URL(text);
    return url.protocol === 'https:' && url.username === '' && url.password === '' ? [url] : [];
  });
}

/** Ways to the addresses in a cell or its note. The cell itself shows them as the text that they are. */
export function links(texts: readonly string[]) {
  const found = new Map(texts.flatMap(addressesIn).map((url) => [url.href, url]));
  if (found.size === 0) return '';
  return html`<h3>${words.slip.addresses}</h3>
    <ul class="chips">
      ${[...found.values()].map(
        (url) =>
          html`<li>
            <button class="chip" @click=${() => ask(url)}><span>${url.host}</span></button>
          </li>`,
      )}
    </ul>`;
}

/** Says where it leads, in letters that no other host has, and asks. */
function ask(url: URL): void {
  openDialogBox(
    { title: words.slip.leave, className: 'ask-box' },
    (close) => html`
      <div class="box-body stack">
        <p>${words.slip.leads}</p>
        <p class="address"><b>${url.host}</b>${url.href.slice(url.origin.length)}</p>
        <div class="row end">
          <a
            class="button lit"
            href=${url.href}
            target="_blank"
            rel="noopener noreferrer"
            autofocus
            @click=${() => close()}
            >${words.slip.open}</a
          >
          <button class="button" @click=${() => close()}>${words.slip.stay}</button>
        </div>
      </div>
    `,
  );
}
