import { html } from 'lit-html';
import { quantityNames } from '../../../functions/quantities/names.ts';
import { units } from '../../../functions/quantities/units.ts';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** What the selected cells measure: it decides how typing is read and how numbers are written. */
export function quantity(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: words.quantity.title }, (close) => {
    const now = workbook.entry.value.quantity;
    const choose = (name: (typeof quantityNames)[number] | null) => {
      if (workbook.run(verbs.quantity, { quantity: name })) close();
    };
    return html`<div class="box-body stack">
      <p class="faint">${words.quantity.readAgain(workbook.entry.value.address)}</p>
      <div class="chips">
        ${quantityNames
          .filter((name) => name !== 'verdict')
          .map(
            (name) =>
              html`<button
                class="chip"
                aria-pressed=${name === now}
                title=${units[name].such ? words.quantity.such(units[name].such) : ''}
                @click=${() => choose(name)}
              >
                <span>${units[name].words}</span>
              </button>`,
          )}
      </div>
      <button class="link" @click=${() => choose(null)}>${words.quantity.leave}</button>
    </div>`;
  });
}
