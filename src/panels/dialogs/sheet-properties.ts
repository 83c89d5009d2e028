import { html } from 'lit-html';
import { phases, type SheetProperties } from '../../book/types.ts';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';
import { words } from '../../words/words.ts';

/** What a sheet says of itself: title, purpose, phase, its name in formulas, what stays in view. */
export function sheetProperties(workbook: Workbook, _shell: Shell, about?: string): void {
  const id = about ?? workbook.head.value.sheet;
  const now = workbook.propertiesOf(id);
  if (!now) return;
  openDialogBox({ title: words.sheet.title }, (close) => {
    const keep = (event: Event) => {
      if (workbook.run(verbs.sheetProperties, { sheet: id, properties: read(fieldsOf(event)) }))
        close();
    };
    const lines = (name: string, label: string, value: number) =>
      html`<label class="field"
        ><span>${label}</span
        ><input class="input" name=${name} type="number" min="0" max="20" .value=${String(value)}
      /></label>`;
    return html`<form class="box-body stack" @submit=${keep}>
      <label class="field"
        ><span>${words.sheet.titleField}</span
        ><input class="input" name="title" autofocus .value=${now.title || now.name}
      /></label>
      <label class="field"
        ><span>${words.sheet.purpose}</span
        ><input class="input" name="purpose" .value=${now.purpose}
      /></label>
      <div class="pair">
        <label class="field"
          ><span>${words.sheet.phase}</span
          ><select class="input" name="phase">
            <option value="" ?selected=${now.phase === null}>${words.sheet.noPhase}</option>
            ${phases.map(
              (phase) =>
                html`<option value=${phase} ?selected=${now.phase === phase}>
                  ${words.contents.phases[phase]}
                </option>`,
            )}
          </select></label
        >
        <label class="field"
          ><span>${words.sheet.name}</span
          ><input class="input" name="name" required .value=${now.name}
        /></label>
        ${lines('frozenRows', words.sheet.rows, now.frozenRows)}
        ${lines('frozenColumns', words.sheet.columns, now.frozenColumns)}
      </div>
      <div class="row end">
        <button type="button" class="button" @click=${close}>${words.sheet.leave}</button>
        <button class="button lit">${words.sheet.keep}</button>
      </div>
    </form>`;
  });
}

function read(fields: ReadonlyMap<string, string>): Partial<SheetProperties> {
  const text = (name: string) => (fields.get(name) ?? '').trim();
  const phase = phases.find((one) => one === text('phase')) ?? null;
  return {
    title: text('title'),
    purpose: text('purpose'),
    name: text('name'),
    phase,
    frozenRows: Number(text('frozenRows')) || 0,
    frozenColumns: Number(text('frozenColumns')) || 0,
  };
}
