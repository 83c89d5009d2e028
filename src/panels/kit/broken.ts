import { html } from 'lit-html';
import { words } from '../../words/words.ts';

const longest = 4_000;

/** What helps to find a fault: what was thrown and where (the names of our files tell the build), the browser. */
export function detailsOf(cause: unknown): string {
  const thrown = cause instanceof Error ? `${cause.stack ?? cause.message}` : String(cause);
  return ['Halfstop', navigator.userAgent, thrown.slice(0, longest)].join('\n');
}

/** Stands in the place of what could not be drawn, whatever it was. */
export function broken(sentence: string, cause: unknown) {
  const copy = async ({ currentTarget }: Event) => {
    const said = (currentTarget as HTMLElement).nextElementSibling;
    const copied = await navigator.clipboard.writeText(detailsOf(cause)).then(
      () => true,
      () => false,
    );
    if (said) said.textContent = copied ? words.broken.copied : words.broken.notCopied;
  };
  return html`<div class="broken" role="alert">
    ${sentence ? html`<p>${sentence}</p>` : ''}
    <button class="link" @click=${(event: Event) => void copy(event)}>${words.broken.copy}</button>
    <p class="faint" role="status"></p>
  </div>`;
}
