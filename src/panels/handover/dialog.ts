import { html } from 'lit-html';
import { words } from '../../words/words.ts';
import { openDialogBox } from '../kit/dialog.ts';
import { signal } from '../kit/signals.ts';
import type { Look } from '../views/look.ts';
import type { Workbook } from '../workbook.ts';
import { sheetsToHandOver } from './gather.ts';
import { pageOf } from './page.ts';

/** The hand-over sheet as it would be on paper, before it is. */
export function handOverDialog(workbook: Workbook, look: Look, date: string): void {
  const said = words.print;
  const sheets = sheetsToHandOver(look);
  const inView = workbook.head.value.sheet;
  const chosen = signal((sheets.find(({ id }) => id === inView) ?? sheets[0])?.id ?? '');
  openDialogBox({ title: said.handover, className: 'handover-box' }, () => {
    const page = pageOf(look, chosen.value, date);
    if (!page) return html`<div class="box-body"><p>${said.noPoints}</p></div>`;
    return html`<div class="choose">
        <label class="field"
          ><span>${said.ofSheet}</span
          ><select
            class="input"
            @change=${(event: Event) =>
              (chosen.value = (event.currentTarget as HTMLSelectElement).value)}
          >
            ${sheets.map(
              ({ id, title }) =>
                html`<option value=${id} ?selected=${id === chosen.value}>${title}</option>`,
            )}
          </select></label
        >
        <button
          class="button lit"
          autofocus
          @click=${() => workbook.run('book.printHandOver', { sheet: chosen.value })}
        >
          ${said.print}
        </button>
      </div>
      <div class="box-body">${page}</div>`;
  });
}
