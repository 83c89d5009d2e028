import { cellsOf, tablesWith, type Cells, type Table } from '../../panels/handover/cells.ts';
import type { Look } from '../../panels/views/look.ts';

/** A sheet of points as it is recorded: its cells, its tables of readings, its numbers. */
export interface Reader {
  readonly look: Look;
  readonly cells: Cells;
  readonly tables: readonly Table[];
  number(row: number, column: number | undefined): number | undefined;
}

export function readerOf(look: Look, sheet: string): Reader {
  const cells = cellsOf(look, sheet);
  return {
    look,
    cells,
    tables: tablesWith(cells, ['reading']),
    number(row, column) {
      if (column === undefined) return undefined;
      const value = look.engine.valueOf({ sheet, row, column });
      return typeof value === 'number' && Number.isFinite(value) ? value : undefined;
    },
  };
}

/** The value right of each label over the points. */
export function* labelled({ cells }: Reader, end: number) {
  for (let row = 0; row < end; row += 1)
    for (let column = 0; column + 1 < cells.columns; column += 1) {
      const label = cells.label(row, column);
      const value = label === '' ? undefined : cells.at(row, column + 1);
      if (value && (value.role || value.content.kind !== 'text'))
        yield { label, row, column: column + 1 };
    }
}

type Entries = { readonly [key: string]: unknown };

/** Without what there is not. */
export const present = <T extends Entries>(entries: T) =>
  Object.fromEntries(Object.entries(entries).filter(([, value]) => value !== undefined)) as {
    [Key in keyof T]?: Exclude<T[Key], undefined>;
  };
