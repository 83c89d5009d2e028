import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** How the selected cells are written: digits, unit, place, weight. Each choice is seen at once. */
export function numberFormat(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: words.format.title, modeless: true, className: 'side-box' }, () => {
    const { value, address } = workbook.slip.value;
    const { units, format } = workbook.format.value;
    const set = (part: object) => workbook.run(verbs.format, part);
    const pick = (event: Event) => (event.currentTarget as HTMLSelectElement).value;
    return html`<div class="box-body stack">
      <p class="big">${value.text} <small>${value.unit ?? ''}</small></p>
      <p class="faint">${words.format.only(address)}</p>
      <label class="field"
        ><span>${words.format.digits}</span
        ><select
          class="input"
          autofocus
          .value=${String(format.decimals ?? '')}
          @change=${(event: Event) =>
            set({ decimals: pick(event) === '' ? null : Number(pick(event)) })}
        >
          <option value="">${words.format.byQuantity}</option>
          ${[0, 1, 2, 3, 4, 5, 6].map((digits) => html`<option value=${digits}>${digits}</option>`)}
        </select></label
      >
      ${
        units.length > 1
          ? html`<label class="field"
              ><span>${words.format.unit}</span
              ><select
                class="input"
                .value=${format.unit ?? ''}
                @change=${(event: Event) => set({ unit: pick(event) || null })}
              >
                <option value="">${words.format.byBook}</option>
                ${units.map((unit) => html`<option value=${unit}>${unit}</option>`)}
              </select></label
            >`
          : ''
      }
      <label class="field"
        ><span>${words.format.place}</span
        ><select
          class="input"
          .value=${format.align ?? ''}
          @change=${(event: Event) => set({ align: pick(event) || null })}
        >
          <option value="">${words.format.usualPlace}</option>
          <option value="left">${words.format.left}</option>
          <option value="centre">${words.format.centre}</option>
          <option value="right">${words.format.right}</option>
        </select></label
      >
      <label class="check"
        ><input
          type="checkbox"
          .checked=${format.bold === true}
          @change=${(event: Event) => set({ bold: (event.currentTarget as HTMLInputElement).checked || null })}
        />${words.format.bold}</label
      >
      <label class="check"
        ><input
          type="checkbox"
          .checked=${format.italic === true}
          @change=${(event: Event) => set({ italic: (event.currentTarget as HTMLInputElement).checked || null })}
        />${words.format.italic}</label
      >
    </div>`;
  });
}
