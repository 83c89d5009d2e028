import { html } from 'lit-html';
import { openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

/** How the selected cells are written: digits, unit, place, weight. Each choice is seen at once. */
export function numberFormat(workbook: Workbook, _shell: Shell): void {
  openDialogBox({ title: 'How it is written', modeless: true, className: 'side-box' }, () => {
    const { value, address } = workbook.slip.value;
    const { units, format } = workbook.format.value;
    const set = (part: object) => workbook.run(verbs.format, part);
    const pick = (event: Event) => (event.currentTarget as HTMLSelectElement).value;
    return html`<div class="box-body stack">
      <p class="big">${value.text} <small>${value.unit ?? ''}</small></p>
      <p class="faint">${address}. Only how it is written changes; the value stays.</p>
      <label class="field"
        ><span>Digits after the decimal sign</span
        ><select
          class="input"
          autofocus
          .value=${String(format.decimals ?? '')}
          @change=${(event: Event) =>
            set({ decimals: pick(event) === '' ? null : Number(pick(event)) })}
        >
          <option value="">as the quantity has it</option>
          ${[0, 1, 2, 3, 4, 5, 6].map((digits) => html`<option value=${digits}>${digits}</option>`)}
        </select></label
      >
      ${
        units.length > 1
          ? html`<label class="field"
              ><span>Unit</span
              ><select
                class="input"
                .value=${format.unit ?? ''}
                @change=${(event: Event) => set({ unit: pick(event) || null })}
              >
                <option value="">as the book says</option>
                ${units.map((unit) => html`<option value=${unit}>${unit}</option>`)}
              </select></label
            >`
          : ''
      }
      <label class="field"
        ><span>Place in the cell</span
        ><select
          class="input"
          .value=${format.align ?? ''}
          @change=${(event: Event) => set({ align: pick(event) || null })}
        >
          <option value="">numbers right, words left</option>
          <option value="left">left</option>
          <option value="centre">centre</option>
          <option value="right">right</option>
        </select></label
      >
      <label class="check"
        ><input
          type="checkbox"
          .checked=${format.bold === true}
          @change=${(event: Event) => set({ bold: (event.currentTarget as HTMLInputElement).checked || null })}
        />Bold</label
      >
      <label class="check"
        ><input
          type="checkbox"
          .checked=${format.italic === true}
          @change=${(event: Event) => set({ italic: (event.currentTarget as HTMLInputElement).checked || null })}
        />Italic</label
      >
    </div>`;
  });
}
