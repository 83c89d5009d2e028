import type { QuantityName } from '../../../functions/quantities/names.ts';
import { units } from '../../../functions/quantities/units.ts';
import { rounded } from '../../../functions/quantities/writing/number.ts';
import { cellAtSpot } from '../../book/look.ts';
import type { Cell } from '../../book/types.ts';
import type { CellPlace } from '../../engine/types.ts';
import type { Shown } from '../shown.ts';
import { show, showCell } from '../views/show.ts';
import type { Look } from '../views/look.ts';
import { spelled } from '../kit/spelled.ts';

/** One sheet as the hand-over reads it: cells by row and column, counted from 0. */
export interface Cells {
  readonly sheet: string;
  readonly rows: number;
  readonly columns: number;
  at(row: number, column: number): Cell | undefined;
  /** Words that are only words: a label or a caption. */
  label(row: number, column: number): string;
  /** The same where a light or a source is named in a cell that is to be filled. */
  named(row: number, column: number): string;
  /** What the cell shows, with its unit; empty where it is blank or waits. */
  said(row: number, column: number): string;
}

export function cellsOf(look: Look, sheet: string): Cells {
  const { document } = look;
  const found = document.sheet(sheet);
  const at = (row: number, column: number) => cellAtSpot(document, { sheet, row, column });
  const textOf = (cell: Cell | undefined) =>
    cell?.content.kind === 'text' ? cell.content.text.trim() : '';
  return {
    sheet,
    rows: found?.rows.length ?? 0,
    columns: found?.columns.length ?? 0,
    at,
    label(row, column) {
      const cell = at(row, column);
      return cell?.role ? '' : textOf(cell);
    },
    named: (row, column) => textOf(at(row, column)),
    said(row, column) {
      const { text, unit, tone } = readable(look, { sheet, row, column });
      return tone ? '' : spelled([text, unit].filter(Boolean).join('\u00a0'));
    },
  };
}

/** Often typed in one unit and read in another: `11'6"` is 3.5052 m to the last figure. */
const converted: ReadonlySet<QuantityName | undefined> = new Set<QuantityName>([
  'length',
  'illuminance',
  'luminance',
]);

/** As the cell shows it, with no more figures than a tape or a meter has. */
function readable(look: Look, at: CellPlace): Shown {
  const shown = showCell(look, at);
  const { document, engine, writing } = look;
  const [value, quantity] = [engine.valueOf(at), engine.quantityOf(at)];
  const isExact =
    !quantity ||
    !converted.has(quantity) ||
    shown.unit !== units[quantity].base ||
    cellAtSpot(document, at)?.format?.decimals !== undefined;
  return isExact || typeof value !== 'number'
    ? shown
    : show(rounded(value, { typed: 4 }), quantity, writing);
}

/** Columns by what a row says in small letters, of two alike the first: its labels unless said otherwise. */
export function captionsIn(
  cells: Cells,
  row: number,
  wordsAt: Cells['label'] = cells.label,
): ReadonlyMap<string, number> {
  const columns = new Map<string, number>();
  for (let column = 0; column < cells.columns; column += 1) {
    const words = wordsAt(row, column).toLowerCase();
    if (words !== '' && !columns.has(words)) columns.set(words, column);
  }
  return columns;
}

/** A row of captions with the rows below it, as long as their first cell has words. */
export interface Table {
  readonly head: number;
  /** Columns by caption, in small letters. */
  readonly columns: ReadonlyMap<string, number>;
  readonly rows: readonly number[];
}

/** The tables of a sheet that have one of these captions; what names a row is a label unless said otherwise. */
export function tablesWith(
  cells: Cells,
  captions: readonly string[],
  nameOf: Cells['label'] = cells.label,
): readonly Table[] {
  const tables: Table[] = [];
  for (let head = 0; head < cells.rows; head += 1) {
    if (cells.label(head, 0) === '') continue;
    const columns = captionsIn(cells, head);
    if (!captions.some((caption) => columns.has(caption))) continue;
    const rows: number[] = [];
    for (let row = head + 1; row < cells.rows && nameOf(row, 0) !== ''; row += 1) rows.push(row);
    if (rows.length > 0) tables.push({ head, columns, rows });
    head += rows.length;
  }
  return tables;
}
