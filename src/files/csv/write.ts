import { fromBase } from '../../../functions/quantities/unit.ts';
import { units } from '../../../functions/quantities/units.ts';
import { workbookUnit } from '../../../functions/quantities/workbookUnit.ts';
import { writeForPeople } from '../../../functions/quantities/write.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import { isError } from '../../../functions/values.ts';
import { writingSettings } from '../../book/settings.ts';
import { cellAtSpot } from '../../book/look.ts';
import type { Document, Sheet } from '../../book/types.ts';
import type { Values } from '../out/values.ts';
import { joinTable } from '../table.ts';
import { escapedText } from './escape.ts';

type Separator = ',' | '\t';

/** A cell as a table takes it: a number apart from what it measures. */
type Entry =
  | { readonly kind: 'empty' }
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'number';
      readonly number: string;
      readonly unit: string;
      readonly whole: string;
    };

/**
 * A sheet as a table of text: what is shown, in the book’s units, with a decimal point. Where all
 * numbers under a heading share a unit, the heading names it and they stay numbers; else each
 * carries its own. Only texts are guarded against being taken for formulas.
 */
export function tableOf(
  document: Document,
  values: Pick<Values, 'valueOf' | 'quantityOf'>,
  sheet: Sheet,
  separator: Separator = ',',
): string {
  const { id, rows, columns } = sheet;
  const entries = rows.ids.map((_, row) =>
    columns.ids.map((__, column) => entryAt(document, values, { sheet: id, row, column })),
  );
  while (entries.at(-1)?.every(({ kind }) => kind === 'empty')) entries.pop();
  const table = entries.map((row) => row.map(written));
  columns.ids.forEach((_, column) => head(entries, table, column));
  return joinTable(table, separator);
}

function entryAt(
  document: Document,
  values: Pick<Values, 'valueOf' | 'quantityOf'>,
  spot: { sheet: string; row: number; column: number },
): Entry {
  const value = values.valueOf(spot);
  if (value === null) return { kind: 'empty' };
  if (isError(value)) return value.waiting ? { kind: 'empty' } : { kind: 'text', text: value.code };
  if (typeof value === 'boolean') return { kind: 'text', text: value ? 'TRUE' : 'FALSE' };
  if (value === '') return { kind: 'empty' };
  if (typeof value === 'string') return { kind: 'text', text: value };
  const quantity = values.quantityOf(spot);
  if (quantity === undefined || quantity === 'number')
    return { kind: 'number', number: String(value), unit: '', whole: String(value) };
  const writing = { ...writingSettings(document.settings), decimal: '.' as const };
  const format = cellAtSpot(document, spot)?.format ?? {};
  const whole = writeForPeople(quantity, value, writing, format);
  const unit =
    units[quantity].units.find(({ symbol }) => symbol === format.unit) ??
    workbookUnit(quantity, writing);
  return inWords.has(quantity)
    ? { kind: 'number', number: whole, unit: '', whole }
    : {
        kind: 'number',
        number: String(unit ? tidy(fromBase(unit, value)) : value),
        unit: unit?.symbol ?? units[quantity].base,
        whole,
      };
}

/** What a bare number would not say. */
const inWords: ReadonlySet<QuantityName> = new Set<QuantityName>(['dateTime', 'fNumber', 'time']);

/** Conversions end by accident. */
const tidy = (value: number) => Number(value.toPrecision(15));

function written(entry: Entry): string {
  if (entry.kind === 'empty') return '';
  return entry.kind === 'text' ? escapedText(entry.text) : entry.whole;
}

/** Each run of numbers under a text: in one unit, the text names it. */
function head(entries: readonly (readonly Entry[])[], table: string[][], column: number): void {
  let from = -1;
  const end = (to: number) => {
    const run = entries.slice(from + 1, to).flatMap((row) => row[column] ?? []);
    const numbers = run.filter((entry) => entry.kind === 'number');
    const [first] = numbers;
    const heading = entries[from]?.[column];
    if (!first || numbers.some(({ unit }) => unit !== first.unit)) return;
    if (first.unit !== '' && heading?.kind !== 'text') return;
    const row = table[from];
    if (row && heading?.kind === 'text' && first.unit !== '' && !names(heading.text, first.unit))
      row[column] = escapedText(`${heading.text} (${first.unit})`);
    for (let index = from + 1; index < to; index += 1) {
      const entry = entries[index]?.[column];
      const cells = table[index];
      if (entry?.kind === 'number' && cells) cells[column] = entry.number;
    }
  };
  entries.forEach((row, index) => {
    if (row[column]?.kind !== 'text') return;
    end(index);
    from = index;
  });
  end(entries.length);
}

const names = (heading: string, unit: string) => heading.includes(`(${unit})`);
