import type { Region } from '../book/make/growing.ts';
import type { Cell, Id, Sheet } from '../book/types.ts';

/**
 * The rows of the table around a place: as far up and down as they are filled and their first cells
 * are alike, without the row of words that heads them. Undefined where that is no table.
 */
export function tableAround(sheet: Sheet, row: number): Region | undefined {
  const rows = sheet.rows.ids;
  const filled = (at: number): readonly Cell[] => cellsOf(sheet, rows[at]);
  if (filled(row).length === 0) return undefined;
  let top = row;
  while (top > 0 && filled(top - 1).length > 0) top -= 1;
  if (filled(top).every(({ content }) => content.kind === 'text')) top += 1;
  if (top > row) return undefined;
  const like = (at: number): boolean =>
    at >= top && filled(at).length > 0 && roleOf(sheet, at) === roleOf(sheet, row);
  let first = row;
  while (like(first - 1)) first -= 1;
  let last = row;
  while (like(last + 1)) last += 1;
  if (last === first) return undefined;
  let width = sheet.columns.length;
  const isEmpty = (column: number): boolean => {
    const id = sheet.columns.ids[column];
    return rows
      .slice(first, last + 1)
      .every((line) => id === undefined || sheet.cell(line, id) === undefined);
  };
  while (width > 1 && isEmpty(width - 1)) width -= 1;
  return { sheet: sheet.id, top: first, left: 0, height: last - first + 1, width };
}

const cellsOf = (sheet: Sheet, row: Id | undefined): readonly Cell[] =>
  sheet.columns.ids.flatMap((column) => {
    const cell = row === undefined ? undefined : sheet.cell(row, column);
    return cell && cell.content.kind !== 'blank' ? [cell] : [];
  });

function roleOf(sheet: Sheet, row: number): Cell['role'] {
  const [line, column] = [sheet.rows.ids[row], sheet.columns.ids[0]];
  return line !== undefined && column !== undefined ? sheet.cell(line, column)?.role : undefined;
}
