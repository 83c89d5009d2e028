import type { SheetEntry } from '../workbook.ts';

/**
 * The place in the book that a sheet takes when it moves one up or down among its own phase, where
 * the contents show it. Undefined at the end of its group.
 */
export function neighbour(
  sheets: readonly SheetEntry[],
  id: string,
  way: -1 | 1,
): number | undefined {
  const phase = sheets.find((sheet) => sheet.id === id)?.phase;
  const group = sheets.filter((sheet) => sheet.phase === phase);
  const other = group[group.findIndex((sheet) => sheet.id === id) + way];
  return other ? sheets.indexOf(other) : undefined;
}
