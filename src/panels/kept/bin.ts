import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Books that were put away: thirty days to change one's mind. */
export function bin(workbook: Workbook): void {
  openDialogBox({ title: words.kept.bin, className: 'wide-box' }, (close) => {
    const { bin: books } = workbook.start.value;
    if (books.length === 0)
      return html`<div class="box-body"><p class="none">${words.kept.binEmpty}</p></div>`;
    return html`<div class="box-body">
      <p class="faint">${words.kept.binHelp}</p>
      <ul class="versions">
        ${books.map(
          ({ id, title, size, when }) =>
            html`<li>
              <div><b>${title}</b><span>${when} · ${size}</span></div>
              <span class="verbs">
                <button
                  class="button"
                  aria-label=${words.kept.takeOutOne(title)}
                  @click=${() => workbook.run(verbs.takeOut, { id })}
                >
                  ${words.kept.takeOut}
                </button>
                <button
                  class="button"
                  aria-label=${words.kept.removeOne(title)}
                  @click=${() => workbook.run(verbs.removeBook, { id })}
                >
                  ${words.kept.removeForGood}
                </button>
              </span>
            </li>`,
        )}
      </ul>
      <div class="row end">
        <button
          class="button"
          @click=${() => {
            close();
            workbook.run(verbs.emptyBin);
          }}
        >
          ${words.kept.emptyBin}
        </button>
      </div>
    </div>`;
  });
}
