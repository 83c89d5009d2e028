import { readTable } from './table.ts';
import { words } from '../words/words.ts';

/** How a reading of a walk was taken. */
export type WalkMeter = 'setting' | 'dome' | 'flat' | 'spot' | 'colour';

/** One line of a walk, as a person wrote it. */
export interface WalkRow {
  readonly place: string;
  readonly point: string;
  readonly meter: WalkMeter;
  /** As written; empty when it was not metered yet. */
  readonly reading: string;
  readonly note: string;
  /** Line of the text it came from, counted from 1. */
  readonly line: number;
}

export interface Walk {
  readonly rows: readonly WalkRow[];
  readonly decimal: '.' | ',';
  /** Lines that could not be taken, with the reason. */
  readonly leftOut: readonly string[];
}

type Column = 'place' | 'point' | 'meter' | 'reading' | 'note';

const headings: ReadonlyMap<string, Column> = new Map([
  ['place', 'place'],
  ['room', 'place'],
  ['location', 'place'],
  ['point', 'point'],
  ['position', 'point'],
  ['subject', 'point'],
  ['meter', 'meter'],
  ['receptor', 'meter'],
  ['mode', 'meter'],
  ['reading', 'reading'],
  ['value', 'reading'],
  ['note', 'note'],
  ['notes', 'note'],
  ['remark', 'note'],
  ['remarks', 'note'],
]);

const meters: readonly (readonly [RegExp, WalkMeter])[] = [
  [/^(incident )?dome$/, 'dome'],
  [/^(incident )?flat$/, 'flat'],
  [/^(reflected|spot|reflected spot)$/, 'spot'],
  [/^colou?r$/, 'colour'],
  [/^(setting|camera)$/, 'setting'],
];

/** Whether the text looks like a walk: its first line names a point and a reading. */
export function looksLikeWalk(text: string): boolean {
  const first = readTable(text)?.rows[0];
  return first !== undefined && hasColumns(columnsOf(first));
}

/** Reads a walk of readings from CSV, or from text copied out of another program. */
export function readWalk(text: string): Walk | { readonly reason: string } {
  const table = readTable(text);
  const [first, ...body] = table?.rows ?? [];
  if (!table || !first) {
    return { reason: words.files.noTable };
  }
  const columns = columnsOf(first);
  if (!hasColumns(columns)) {
    return {
      reason: words.files.noHead,
    };
  }
  const rows: WalkRow[] = [];
  const leftOut: string[] = [];
  for (const [index, cells] of body.entries()) {
    const line = index + 2;
    const cell = (column: Column): string => cells[columns.get(column) ?? -1]?.trim() ?? '';
    if (cells.every((text) => text.trim() === '')) continue;
    const written = cell('meter').toLowerCase();
    const meter = meters.find(([pattern]) => pattern.test(written))?.[1];
    if (!cell('point')) leftOut.push(words.files.lineNoPoint(line));
    else if (!meter) leftOut.push(words.files.lineNoMeter(line, cell('meter')));
    else {
      rows.push({
        place: cell('place'),
        point: cell('point'),
        meter,
        reading: cell('reading'),
        note: cell('note'),
        line,
      });
    }
  }
  return { rows, decimal: table.decimal, leftOut };
}

function columnsOf(first: readonly string[]): ReadonlyMap<Column, number> {
  const columns = new Map<Column, number>();
  for (const [index, heading] of first.entries()) {
    const column = headings.get(heading.trim().toLowerCase());
    if (column && !columns.has(column)) columns.set(column, index);
  }
  return columns;
}

function hasColumns(columns: ReadonlyMap<Column, number>): boolean {
  return columns.has('point') && columns.has('reading') && columns.has('meter');
}
