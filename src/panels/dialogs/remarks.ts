import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { roam } from '../kit/popup.ts';
import type { Shell } from '../frame.ts';
import type { Link, SheetRemarks } from '../shown.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** Below this width the list would lie over the cell that it leads to, and makes way for it. */
const roomBeside = '(min-width: 760px)';

/** What the check has to say on the whole book, beside the page: each cell named is a way to it. */
export function remarks(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: words.remarks.title, className: 'side-box', modeless: true }, (close) => {
    const { count, marks, notes } = workbook.remarks.value;
    const jump = ({ target }: Link) => {
      if (!matchMedia(roomBeside).matches) close();
      workbook.jump(target);
    };
    return html`<div class="box-body remarks" @keydown=${roam('.chip')}>
      <p class="faint" role="status">
        ${count === 0 ? words.remarks.none : words.remarks.some(count)}
      </p>
      ${marks.map((sheet) => section(sheet, jump))}
      ${notes.length > 0 ? html`<h2>${words.remarks.worthALook}</h2>` : ''}
      ${notes.map((sheet) => section(sheet, jump))}
    </div>`;
  });
  document.querySelectorAll<HTMLElement>('dialog[open] .remarks .chip')[nextOf(workbook)]?.focus();
}

function section({ title, count, said }: SheetRemarks, jump: (to: Link) => void) {
  const listed = said.reduce((sum, { cells }) => sum + cells.length, 0);
  return html`<section aria-label=${title}>
    <h3>${title}</h3>
    ${said.map(
      ({ sentence, cells }) =>
        html`<p>${sentence}</p>
          <ul class="chips">
            ${cells.map(
              (cell) =>
                html`<li>
                  <button class="chip" @click=${() => jump(cell)}>
                    <span>${cell.label}</span>
                  </button>
                </li>`,
            )}
          </ul>`,
    )}
    ${listed < count ? html`<p class="faint">${words.remarks.more(count - listed)}</p>` : ''}
  </section>`;
}

/** The cell after the selected one, so that the list is walked with its key and Enter. */
function nextOf({ remarks: { value }, slip, head }: Workbook): number {
  const all = [...value.marks, ...value.notes].flatMap(({ said }) =>
    said.flatMap(({ cells }) => cells),
  );
  const here = all.findLastIndex(
    ({ target, label }) =>
      target.sheet === head.value.sheet && label.split(' ')[0] === slip.value.address,
  );
  return (here + 1) % Math.max(1, all.length);
}
