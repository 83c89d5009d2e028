import type { Entry } from '../../book/make/enter.ts';
import { captionsIn, type Cells } from '../../panels/handover/cells.ts';

/** A table with captions, its rows from the first to the last that is kept for it. */
export interface Rows {
  readonly columns: ReadonlyMap<string, number>;
  readonly first: number;
  readonly last: number;
  readonly taken: readonly number[];
  readonly free: readonly number[];
}

/** The rows below a head, as far as they work something out in this column. */
export function rowsUnder(
  cells: Cells,
  head: number | undefined,
  worked: string,
): Rows | undefined {
  if (head === undefined) return undefined;
  const columns = captionsIn(cells, head);
  const column = columns.get(worked);
  if (column === undefined) return undefined;
  const rows: number[] = [];
  for (let row = head + 1; cells.at(row, column)?.content.kind === 'formula'; row += 1)
    rows.push(row);
  const isFree = (row: number) => (cells.at(row, 0)?.content.kind ?? 'blank') === 'blank';
  return {
    columns,
    first: head + 1,
    last: head + rows.length,
    taken: rows.filter((row) => !isFree(row)),
    free: rows.filter(isFree),
  };
}

/** The first row that has this label in its first column. */
export function rowOf(cells: Cells, label: string): number | undefined {
  for (let row = 0; row < cells.rows; row += 1) if (cells.label(row, 0) === label) return row;
  return undefined;
}

/** Texts for a row by the captions of its columns. */
export const typedInto = (
  sheet: string,
  { columns }: Rows,
  row: number,
  texts: Readonly<Record<string, string>>,
): readonly Entry[] =>
  Object.entries(texts).flatMap(([caption, text]) => {
    const column = columns.get(caption);
    return column === undefined ? [] : [{ sheet, row, column, text }];
  });
