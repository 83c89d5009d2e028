import type { Document, Id, Sheet } from '../book/types.ts';
import { shownText } from '../check/shown.ts';
import type { Engine } from '../engine/types.ts';
import { tableAround } from './table.ts';

interface Ground {
  readonly document: Document;
  readonly engine: Engine;
}

/** A column of a table, with what its rows show there. */
export interface FilterColumn {
  readonly head: Id;
  readonly column: Id;
  readonly caption: string;
  /** Positions of the rows, and what each shows. */
  readonly rows: readonly { readonly row: number; readonly text: string }[];
}

/** The column of the table around a place; undefined where that is no table with captions. */
export function columnAround(
  { document, engine }: Ground,
  sheet: Sheet,
  { row, column }: { readonly row: number; readonly column: number },
): FilterColumn | undefined {
  const region = tableAround(sheet, row);
  const head = sheet.rows.idAt((region?.top ?? 0) - 1);
  const columnId = sheet.columns.idAt(column);
  if (!region || head === undefined || columnId === undefined) return undefined;
  const text = (at: number) => shownText(document, engine, { sheet: sheet.id, row: at, column });
  return {
    head,
    column: columnId,
    caption: text(region.top - 1),
    rows: Array.from({ length: region.height }, (_, index) => {
      const at = region.top + index;
      return { row: at, text: text(at) };
    }),
  };
}

/** The table that the filter of a sheet goes by; undefined without one, or where its lines are gone. */
export function filteredColumn(ground: Ground, sheet: Sheet): FilterColumn | undefined {
  const { filter } = sheet.properties;
  const head = filter ? sheet.rows.indexOf(filter.head) : -1;
  const column = filter ? sheet.columns.indexOf(filter.column) : -1;
  if (head < 0 || column < 0) return undefined;
  return columnAround(ground, sheet, { row: head + 1, column });
}

const none: readonly number[] = [];

/** Positions of the rows that the filter of a sheet leaves out, from the top. */
export function rowsLeftOut(ground: Ground, id: Id): readonly number[] {
  const sheet = ground.document.sheet(id);
  const hides = new Set(sheet?.properties.filter?.hides);
  if (!sheet || hides.size === 0) return none;
  const found = filteredColumn(ground, sheet);
  return found?.rows.flatMap(({ row, text }) => (hides.has(text) ? [row] : [])) ?? none;
}
