import { html } from 'lit-html';
import { phases, type SheetProperties } from '../../book/types.ts';
import { fieldsOf, openDialogBox } from '../kit/dialog.ts';
import type { Shell } from '../frame.ts';
import { verbs } from '../verbs.ts';
import type { Workbook } from '../workbook.ts';

/** What a sheet says of itself: title, purpose, phase, its name in formulas, what stays in view. */
export function sheetProperties(workbook: Workbook, _shell: Shell, about?: string): void {
  const id = about ?? workbook.head.value.sheet;
  const now = workbook.propertiesOf(id);
  if (!now) return;
  openDialogBox({ title: 'This sheet' }, (close) => {
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
        ><span>Title</span
        ><input class="input" name="title" autofocus .value=${now.title || now.name}
      /></label>
      <label class="field"
        ><span>What it is for, in one line</span
        ><input class="input" name="purpose" .value=${now.purpose}
      /></label>
      <div class="pair">
        <label class="field"
          ><span>Phase of the work</span
          ><select class="input" name="phase">
            <option value="" ?selected=${now.phase === null}>none</option>
            ${phases.map(
              (phase) =>
                html`<option value=${phase} ?selected=${now.phase === phase}>${phase}</option>`,
            )}
          </select></label
        >
        <label class="field"
          ><span>Name in formulas</span
          ><input class="input" name="name" required .value=${now.name}
        /></label>
        ${lines('frozenRows', 'Rows that stay in view', now.frozenRows)}
        ${lines('frozenColumns', 'Columns that stay in view', now.frozenColumns)}
      </div>
      <div class="row end">
        <button type="button" class="button" @click=${close}>Leave as it was</button>
        <button class="button lit">Keep</button>
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
