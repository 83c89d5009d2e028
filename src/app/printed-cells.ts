import type { CellPicture, GridModel } from '../grid/contract.ts';

/** The smallest block from A1 that has anything to see. */
export function written(model: GridModel): { rows: number; columns: number } {
  const used = model.used();
  let rows = 0;
  let columns = 0;
  for (let row = 0; row < used.rows; row += 1) {
    for (let column = 0; column < used.columns; column += 1) {
      if (isBlank(model, row, column)) continue;
      rows = row + 1;
      columns = Math.max(columns, column + 1);
    }
  }
  return { rows, columns };
}

const isBlank = (model: GridModel, row: number, column: number): boolean =>
  isNothing(model.cell(row, column));

/** Nothing to see and nothing prepared. */
export const isNothing = ({ text, role, verdict, note }: CellPicture): boolean =>
  text === '' && !role && !verdict && !note;

/** About how wide a letter is, in CSS pixels. */
const letter = 7;

/** Columns after the first where words go on over a blank neighbour. */
export function spilling(
  model: GridModel,
  rows: readonly number[],
  widths: readonly number[],
): ReadonlySet<number> {
  const spills = (row: number, column: number): boolean => {
    const { text, align = 'left' } = model.cell(row, column);
    return (
      align === 'left' &&
      text.length * letter > (widths[column] ?? 0) &&
      isBlank(model, row, column + 1)
    );
  };
  const columns = widths.map((_, column) => column).slice(1, -1);
  return new Set(columns.filter((column) => rows.some((row) => spills(row, column))));
}
