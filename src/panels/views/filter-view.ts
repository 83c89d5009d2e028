import { filteredColumn, rowsLeftOut, type FilterColumn } from '../../commands/filtered.ts';
import type { RowFilter } from '../../book/types.ts';
import type { FilterView } from '../shown.ts';
import type { Look } from './look.ts';
import { words } from '../../words/words.ts';

/** What the rows of a column show, in the order of the rows; blank ones last. */
export function filterView(
  { column, caption, rows }: FilterColumn,
  filter: RowFilter | null,
): FilterView {
  const counts = new Map<string, number>();
  for (const { text } of rows) counts.set(text, (counts.get(text) ?? 0) + 1);
  const hides = new Set(filter?.column === column ? filter.hides : []);
  const values = [...counts].map(([text, count]) => ({ text, count, shown: !hides.has(text) }));
  return {
    caption,
    values: values.toSorted((a, b) => Number(a.text === '') - Number(b.text === '')),
  };
}

/** What the head of a sheet says of its filter; empty where every row is in view. */
export function filteredInWords(look: Look, id: string): string {
  const sheet = look.document.sheet(id);
  const column = sheet && filteredColumn(look, sheet);
  if (!column) return '';
  const { caption, rows } = column;
  return words.filter.shown(caption, rows.length - rowsLeftOut(look, id).length, rows.length);
}
