import { readAs } from '../../../functions/quantities/read.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import { figuresOf } from '../../book/figures.ts';
import { layoutOf } from '../../book/look.ts';
import { kindOf } from '../../figures/kinds.ts';
import { writeReference } from '../../formula/write.ts';
import type { SheetSelection } from '../../session/session.ts';
import type { Look } from '../views/look.ts';
import { guessed } from './guess.ts';
import type { FigureForm, PlannedForm } from './seam.ts';

/** A figure that is there as its dialog shows it. */
export function formOf({ document, writing }: Look, id: string): FigureForm | undefined {
  const figure = figuresOf(document).find((one) => one.id === id);
  if (!figure) return undefined;
  const { kind, title, sheet, ranges, values, options } = figure;
  const fields: Record<string, string> = {};
  for (const { name, quantities } of kindOf(kind)?.inputs ?? []) {
    const range = ranges[name];
    const value = values[name];
    if (range) {
      const address = writeReference(range, sheet, layoutOf(document));
      fields[name] = address.startsWith('#') ? '' : address;
    } else if (value !== undefined)
      fields[name] = writeQuantity(quantities?.[0] ?? 'number', value, writing).text;
  }
  return { kind, title, fields, options };
}

/** A new figure as the selection suggests it. */
export function newForm(
  look: Look,
  kind: string,
  sheet: string,
  selection: SheetSelection,
): FigureForm {
  const found = kindOf(kind);
  return {
    kind,
    title: found?.name ?? '',
    fields: found ? guessed(look, found, sheet, selection) : {},
    options: {},
  };
}

/** Texts of the dialog: a value where one is taken and written, else the address of cells. */
export function plannedForm({ writing }: Look, form: FigureForm): PlannedForm {
  const cells: Record<string, string> = {};
  const values: Record<string, number> = {};
  for (const { name, shape, quantities } of kindOf(form.kind)?.inputs ?? []) {
    const text = (form.fields[name] ?? '').trim();
    if (text === '') continue;
    const [quantity] = quantities ?? [];
    const read = shape === 'single' && quantity ? readAs(quantity, text, writing) : undefined;
    if (read?.ok) values[name] = read.value;
    else cells[name] = text.replace(/^=/, '');
  }
  const { kind, title, options } = form;
  return { kind, title: title.trim(), cells, values, options };
}
