import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import { roam } from '../kit/popup.ts';
import type { Shell } from '../frame.ts';
import { remarksInWords } from '../views/remarks-view.ts';
import type { RemarkEntry, SheetRemarks, Workbook } from '../workbook.ts';

/** Below this width the list would lie over the cell that it leads to, and makes way for it. */
const roomBeside = '(min-width: 760px)';

/** What the check has to say on the whole book, beside the page: each remark is a way to its cell. */
export function remarks(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: 'Remarks', className: 'side-box', modeless: true }, (close) => {
    const { count, sheets } = workbook.remarks.value;
    const jump = ({ target }: RemarkEntry) => {
      if (!matchMedia(roomBeside).matches) close();
      workbook.jump(target);
    };
    return html`<div class="box-body remarks" @keydown=${roam('.remark-link')}>
      <p class="faint" role="status">
        ${
          count === 0
            ? 'Nothing to remark on: what cells measure goes together throughout the book.'
            : `${remarksInWords(count)} on the book. Nothing is stopped by them; they go once the cell is right.`
        }
      </p>
      ${sheets.map((sheet) => section(sheet, jump))}
    </div>`;
  });
  document.querySelectorAll<HTMLElement>('dialog .remark-link')[nextOf(workbook)]?.focus();
}

/** The remark after that on the selected cell, so that the list is walked with one key and Enter. */
function nextOf({ remarks: { value }, head, entry }: Workbook): number {
  const all = value.sheets.flatMap((sheet) => sheet.remarks);
  const here = all.findLastIndex(
    ({ target, address }) => target.sheet === head.value.sheet && address === entry.value.address,
  );
  return (here + 1) % Math.max(1, all.length);
}

function section({ title, count, remarks: here }: SheetRemarks, jump: (to: RemarkEntry) => void) {
  const more = count - here.length;
  return html`<section aria-label=${title}>
    <h3>${title}</h3>
    <ul>
      ${here.map(
        (remark) =>
          html`<li>
            <button class="remark-link" @click=${() => jump(remark)}>
              <b>${[remark.address, remark.label].filter(Boolean).join(' · ')}</b>
              <span>${remark.sentence}</span>
            </button>
          </li>`,
      )}
    </ul>
    ${more > 0 ? html`<p class="faint">and ${more} more on this sheet</p>` : ''}
  </section>`;
}
