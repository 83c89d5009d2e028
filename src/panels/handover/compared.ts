import type { Sheet } from '../../book/types.ts';
import type { Cells } from './cells.ts';
import type { Listed } from './handover.ts';

/** By these words the parts of the sheet are found; the template sets them. */
export const captions = { sentence: 'In a sentence', order: 'In order' } as const;

/** A sheet that holds options against one another. */
export const isComparison = (sheet: Sheet | undefined): boolean =>
  sheet?.properties.template === 'compare';

/** The row that begins with these words. */
export function rowOf(cells: Cells, caption: string): number | undefined {
  for (let row = 0; row < cells.rows; row += 1) if (cells.label(row, 0) === caption) return row;
  return undefined;
}

/** The options as the sheet sorts and filters them, from the row of captions on. */
export function optionsIn(cells: Cells): Listed {
  const head = rowOf(cells, captions.order);
  if (head === undefined) return { captions: [], rows: [] };
  const columns = Array.from({ length: cells.columns }, (_, column) => column).filter(
    (column) => cells.label(head, column) !== '',
  );
  const rows: string[][] = [];
  for (let row = head + 1; row < cells.rows && cells.said(row, 0) !== ''; row += 1)
    rows.push(columns.map((column) => cells.said(row, column)));
  return { captions: columns.map((column) => cells.label(head, column)), rows };
}
