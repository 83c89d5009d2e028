import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

/** Books that were put away: thirty days to change one's mind. */
export function bin(workbook: Workbook): void {
  openDialogBox({ title: 'Bin', className: 'wide-box' }, (close) => {
    const { bin: books } = workbook.start.value;
    if (books.length === 0)
      return html`<div class="box-body"><p class="none">It is empty.</p></div>`;
    return html`<div class="box-body">
      <p class="faint">
        A book stays here for thirty days with all its versions, then it is gone for good.
      </p>
      <ul class="versions">
        ${books.map(
          ({ id, title, size, when }) =>
            html`<li>
              <div><b>${title}</b><span>${when} · ${size}</span></div>
              <span class="verbs">
                <button
                  class="button"
                  aria-label="Take ${title} out of the bin"
                  @click=${() => workbook.run(verbs.takeOut, { id })}
                >
                  Take it out
                </button>
                <button
                  class="button"
                  aria-label="Remove ${title} for good"
                  @click=${() => workbook.run(verbs.removeBook, { id })}
                >
                  Remove for good
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
          Empty the bin
        </button>
      </div>
    </div>`;
  });
}
