import type { FigureKind, Input } from '../../figures/figure.ts';
import { columnCaption, rowCaption } from '../../check/captions.ts';
import type { SheetSelection } from '../../session/session.ts';
import { cellAtSpot } from '../../book/look.ts';
import { blockAddress } from '../views/address.ts';
import type { Look } from '../views/look.ts';

interface Table {
  readonly sheet: string;
  readonly top: number;
  readonly bottom: number;
  readonly columns: readonly number[];
  /** The row that is meant where one row is. */
  readonly row: number;
}

/** Rows of a sheet that are looked at: labels of settings stand near its head. */
const looked = 80;

/**
 * Which cells a new figure is probably meant to be drawn from: the columns of the selected rows by
 * what they measure and how they are headed, single cells by the label beside them.
 */
export function guessed(
  look: Look,
  kind: FigureKind,
  sheet: string,
  selection: SheetSelection,
): Record<string, string> {
  const table = tableOf(look, sheet, selection);
  const taken = new Set<number>();
  const fields: Record<string, string> = {};
  for (const input of kind.inputs) {
    const address = finders[input.shape]?.(look, input, table, taken);
    if (address !== undefined) fields[input.name] = address;
  }
  return fields;
}

const finders: Partial<
  Record<
    Input['shape'],
    (look: Look, input: Input, table: Table, taken: Set<number>) => string | undefined
  >
> = {
  rows: columnFor,
  single: cellFor,
  table: tableFor,
  grid: (_look, _input, { top, bottom, columns }) =>
    bottom > top && columns.length > 1
      ? blockAddress(
          { row: top, column: columns[0] ?? 0 },
          { row: bottom, column: columns.at(-1) ?? 0 },
          'cells',
        )
      : undefined,
};

/** What is selected, or the rows around a single cell that have words in front as it has. */
function tableOf({ document }: Look, sheet: string, { ranges, focus }: SheetSelection): Table {
  const block = ranges.at(-1) ?? { from: focus, to: focus };
  const columns = document.sheet(sheet)?.columns.length ?? 0;
  const rows = document.sheet(sheet)?.rows.length ?? 0;
  const span = (from: number, to: number) =>
    Array.from({ length: Math.max(0, Math.min(to, columns - 1) - from + 1) }, (_, i) => from + i);
  const wide = block.to.column > block.from.column;
  const all = span(0, columns - 1);
  const chosen = wide ? span(block.from.column, block.to.column) : all;
  if (block.to.row > block.from.row)
    return {
      ...{ sheet, top: block.from.row, bottom: Math.min(block.to.row, rows - 1) },
      ...{ columns: chosen, row: block.from.row },
    };
  const named = (row: number) =>
    row >= 0 && row < rows && rowCaption(document, sheet, row, columns) !== '' && !isHead(row);
  const isHead = (row: number) =>
    all.some(
      (column) =>
        columnCaption(document, sheet, row + 1, column) !==
        columnCaption(document, sheet, row, column),
    );
  let [top, bottom] = [focus.row, focus.row];
  while (named(top - 1)) top -= 1;
  while (named(bottom + 1)) bottom += 1;
  return { sheet, top, bottom, columns: chosen, row: focus.row };
}

/** The column that fits best by its heading and by what it measures, then the leftmost. */
function columnFor(look: Look, input: Input, table: Table, taken: Set<number>): string | undefined {
  const { sheet, top, bottom, columns } = table;
  const heading = (column: number) => columnCaption(look.document, sheet, top, column);
  const best = columns
    .filter((column) => !taken.has(column) && fits(look, input, sheet, top, bottom, column))
    .map((column) => ({ column, rank: rankOf(input, heading(column)) }))
    .filter(({ rank }) => rank < unlikely || !input.optional)
    .toSorted((a, b) => a.rank - b.rank || a.column - b.column)[0];
  if (!best) return undefined;
  taken.add(best.column);
  const { column } = best;
  return blockAddress({ row: top, column }, { row: bottom, column }, 'cells');
}

const unlikely = 99;

/** Which of the input’s likely words a caption has; 0 for the likeliest. */
function rankOf({ captions = [] }: Input, caption: string): number {
  const rank = captions.findIndex((pattern) => pattern.test(caption));
  return rank < 0 ? unlikely : rank;
}

function fits(
  { engine }: Look,
  { quantities }: Input,
  sheet: string,
  top: number,
  bottom: number,
  column: number,
): boolean {
  for (let row = top; row <= bottom; row += 1) {
    const value = engine.valueOf({ sheet, row, column });
    const quantity = engine.quantityOf({ sheet, row, column });
    if (!quantities) {
      if (typeof value === 'string') return true;
    } else if (typeof value === 'number' && quantity && quantities.includes(quantity)) return true;
  }
  return false;
}

/** The rows under a heading whose first column is called so, as far down as that column is written. */
function tableFor({ document }: Look, { captions = [], wide = 1 }: Input, { sheet }: Table) {
  const used = document.sheet(sheet);
  const textAt = (row: number, column: number): string => {
    const content = cellAtSpot(document, { sheet, row, column })?.content;
    return content?.kind === 'text' ? content.text.trim() : '';
  };
  const isWritten = (row: number, column: number) =>
    (cellAtSpot(document, { sheet, row, column })?.content.kind ?? 'blank') !== 'blank';
  const columns = used?.columns.length ?? 0;
  for (const pattern of captions)
    for (let row = 0; row < Math.min(looked, used?.rows.length ?? 0); row += 1)
      for (let column = 0; column < columns; column += 1) {
        if (!pattern.test(textAt(row, column)) || textAt(row, column + 1) === '') continue;
        let bottom = row;
        while (isWritten(bottom + 1, column)) bottom += 1;
        let right = column;
        while (right + 1 < Math.min(column + wide, columns) && textAt(row, right + 1) !== '')
          right += 1;
        if (bottom > row)
          return blockAddress({ row: row + 1, column }, { row: bottom, column: right }, 'cells');
      }
  return undefined;
}

/** A cell of the meant row under a fitting heading, else one with a fitting label beside it. */
function cellFor(look: Look, input: Input, { sheet, row, columns }: Table): string | undefined {
  const { document } = look;
  const measures = (at: { row: number; column: number }) =>
    fits(look, input, sheet, at.row, at.row, at.column);
  const best = columns
    .map((column) => ({
      row,
      column,
      rank: rankOf(input, columnCaption(document, sheet, row, column)),
    }))
    .filter((at) => at.rank < unlikely && measures(at))
    .toSorted((a, b) => a.rank - b.rank)[0];
  if (best) return blockAddress(best, best, 'cells');
  const used = document.sheet(sheet);
  for (let down = 0; down < Math.min(looked, used?.rows.length ?? 0); down += 1)
    for (let column = 1; column < (used?.columns.length ?? 0); column += 1) {
      const at = { row: down, column };
      if (!measures(at)) continue;
      if (rankOf(input, rowCaption(document, sheet, down, column)) < unlikely)
        return blockAddress(at, at, 'cells');
    }
  return undefined;
}
