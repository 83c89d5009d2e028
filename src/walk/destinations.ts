import type { Spot } from '../book/look.ts';
import type { Document, Id } from '../book/types.ts';
import type { Walk, WalkRow } from '../files/walk.ts';
import { readCameraSettings } from './cameraSettings.ts';
import { beside, findTable, nameOfRow, type SheetTable } from './tables.ts';
import { words } from '../words/words.ts';

export type TableName = 'point' | 'spot reading' | 'colour';

/** A text of the walk and the cell it belongs into; `row` is a name where the row is yet to be made. */
export interface Destined {
  readonly text: string;
  readonly table: TableName | null;
  readonly row: number | string;
  readonly column: number;
}

export interface Destinations {
  readonly texts: readonly Destined[];
  readonly tables: ReadonlyMap<TableName, SheetTable>;
  /** Sentences about what found no place. */
  readonly leftOut: readonly string[];
  /** Points that the walk names without a reading. */
  readonly waiting: readonly string[];
  readonly readings: number;
}

const tableNames: readonly TableName[] = ['point', 'spot reading', 'colour'];

/** Finds for every line of a walk where its reading belongs on a sheet of points. */
export function destinationsOf(document: Document, sheet: Id, walk: Walk): Destinations {
  const tables = new Map<TableName, SheetTable>();
  for (const name of tableNames) {
    const table = findTable(document, sheet, name);
    if (table) tables.set(name, table);
  }
  const texts: Destined[] = [];
  const leftOut: string[] = [...walk.leftOut];
  const waiting: string[] = [];
  let readings = 0;

  const put = (table: TableName, row: number | string, caption: string, text: string): boolean => {
    const column = tables.get(table)?.columns.get(caption);
    if (column === undefined || text === '') return false;
    texts.push({ text, table, row, column });
    return true;
  };
  const rowOf = (table: TableName, name: string): number | string =>
    tables
      .get(table)
      ?.rows.find((row) => nameOfRow(document, sheet, row).toLowerCase() === name.toLowerCase()) ??
    name;
  const rowsWhere = (matches: (name: string) => boolean): readonly number[] =>
    tables
      .get('point')
      ?.rows.filter((row) => matches(nameOfRow(document, sheet, row).toLowerCase())) ?? [];
  const setting = (label: string, text: string): boolean => {
    const spot: Spot | undefined = beside(document, sheet, label);
    if (spot) texts.push({ text, table: null, row: spot.row, column: spot.column });
    return spot !== undefined;
  };

  const takers: Readonly<Record<WalkRow['meter'], (row: WalkRow) => boolean>> = {
    setting(row) {
      if (row.point.toLowerCase() !== 'camera') return setting(row.point, row.reading);
      const camera = readCameraSettings(`${row.reading}, ${row.note}`, walk.decimal);
      for (const part of camera.leftOut) leftOut.push(words.walk.partNoPlace(row.line, part));
      return camera.settings.every(({ label, typed }) => setting(label, typed));
    },
    spot(row) {
      const at = rowOf('spot reading', row.point);
      put('spot reading', at, 'note', row.note);
      return put('spot reading', at, 'reading', row.reading);
    },
    colour(row) {
      const at = rowOf('colour', row.point);
      const tint = /duv\s*([+\-−]?[\d.,]+)/i.exec(row.note)?.[1];
      if (tint) put('colour', at, 'tint', tint);
      return put('colour', at, 'reading', row.reading);
    },
    dome: (row) => incident(row),
    flat: (row) => incident(row),
  };

  function incident(row: WalkRow): boolean {
    const off = /^(?:all )?lamps off(?: at (?:the )?(.+))?$/i.exec(row.point);
    if (off) {
      const about = off[1]?.toLowerCase() ?? '';
      const rows = rowsWhere((name) => name.includes(about));
      return rows.map((at) => put('point', at, 'lamps off', row.reading)).some(Boolean);
    }
    const alone = /^(.+) alone$/i.exec(row.point)?.[1]?.toLowerCase();
    const [of] = alone === undefined ? [] : rowsWhere((name) => name.startsWith(alone));
    if (of !== undefined) {
      put('point', of, 'with', row.meter);
      return put('point', of, 'alone', row.reading);
    }
    const at = rowOf('point', row.point);
    put('point', at, 'meter', row.meter);
    put('point', at, 'note', row.note);
    return put('point', at, 'reading', row.reading);
  }

  for (const row of walk.rows) {
    const taken = takers[row.meter](row);
    if (taken) readings += 1;
    else if (row.reading === '') waiting.push(row.point);
    else leftOut.push(words.walk.pointNoPlace(row.line, row.point));
  }
  return { texts, tables, leftOut, waiting, readings };
}
