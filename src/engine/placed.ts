import type { WrittenCorner, WrittenEnd } from '../formula/address.ts';
import type { WrittenReference } from '../formula/written.ts';
import type { AxisName, Corner, Id, Layout, LineEnd, Reference } from '../formula/types.ts';
import type { CellBlock } from './types.ts';

/** A reference as HyperFormula wants it: by position, its sheet by id. */
export type Placed =
  | { readonly kind: 'cell'; readonly sheet: Id; readonly at: WrittenCorner }
  | {
      readonly kind: 'range';
      readonly sheet: Id;
      readonly from: WrittenCorner;
      readonly to: WrittenCorner;
    }
  | {
      readonly kind: AxisName;
      readonly sheet: Id;
      readonly from: WrittenEnd;
      readonly to: WrittenEnd;
    }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: 'lost' };

/** Where lines are; the engine never mints any. */
export type Lines = Pick<Layout, 'nameOfSheet' | 'indexOf' | 'nearest'>;

const lost: Placed = { kind: 'lost' };

/** Where a formula's reference points now. */
export function place(reference: Reference, lines: Lines): Placed {
  if (reference.kind === 'name' || reference.kind === 'lost') return reference;
  const { sheet } = reference;
  if (lines.nameOfSheet(sheet) === undefined) return lost;
  if (reference.kind === 'cell') {
    const row = exact(reference.at.row, sheet, 'rows', lines);
    const column = exact(reference.at.column, sheet, 'columns', lines);
    return row && column ? { kind: 'cell', sheet, at: { row, column } } : lost;
  }
  if (reference.kind === 'range') return placeRange(reference.from, reference.to, sheet, lines);
  const span = placeSpan(reference.from, reference.to, sheet, reference.kind, lines);
  return span ? { kind: reference.kind, sheet, ...span } : lost;
}

function exact(
  { id, fixed }: LineEnd,
  sheet: Id,
  axis: AxisName,
  lines: Lines,
): WrittenEnd | undefined {
  const index = lines.indexOf(sheet, axis, id);
  return index < 0 ? undefined : { index, fixed };
}

function placeRange(from: Corner, to: Corner, sheet: Id, lines: Lines): Placed {
  const rows = placeSpan(from.row, to.row, sheet, 'rows', lines);
  const columns = placeSpan(from.column, to.column, sheet, 'columns', lines);
  if (!rows || !columns) return lost;
  return {
    kind: 'range',
    sheet,
    from: { row: rows.from, column: columns.from },
    to: { row: rows.to, column: columns.to },
  };
}

/** Ends whose line is gone stand for the nearest living line inside; without one, nothing is left. */
function placeSpan(
  from: LineEnd,
  to: LineEnd,
  sheet: Id,
  axis: AxisName,
  lines: Lines,
): { readonly from: WrittenEnd; readonly to: WrittenEnd } | undefined {
  const low = lines.nearest(sheet, axis, from.id, 'from');
  const high = lines.nearest(sheet, axis, to.id, 'to');
  if (low < 0 || high < low) return undefined;
  return { from: { index: low, fixed: from.fixed }, to: { index: high, fixed: to.fixed } };
}

/** Where a reference points that was just read from a text, seen from the sheet `own`. */
export function placeWritten(
  written: WrittenReference,
  own: Id,
  sheetNamed: (name: string) => Id | undefined,
): Placed | { readonly reason: string } {
  if (written.kind === 'name') return written;
  const sheet = written.sheet === undefined ? own : sheetNamed(written.sheet);
  if (sheet === undefined) return { reason: `There is no sheet “${written.sheet ?? ''}”.` };
  if (written.kind === 'cell') return { kind: 'cell', sheet, at: written.at };
  if (written.kind === 'range') {
    const rows = inOrder(written.from.row, written.to.row);
    const columns = inOrder(written.from.column, written.to.column);
    return {
      kind: 'range',
      sheet,
      from: { row: rows[0], column: columns[0] },
      to: { row: rows[1], column: columns[1] },
    };
  }
  const [from, to] = inOrder(written.from, written.to);
  return { kind: written.kind, sheet, from, to };
}

function inOrder(a: WrittenEnd, b: WrittenEnd): readonly [WrittenEnd, WrittenEnd] {
  return a.index <= b.index ? [a, b] : [b, a];
}

/** The cells a reference means. Whole columns and rows end where the sheet ends. */
export function blockOf(
  placed: Placed,
  size: (sheet: Id) => { readonly rows: number; readonly columns: number },
): CellBlock | undefined {
  if (placed.kind === 'name' || placed.kind === 'lost') return undefined;
  const { sheet } = placed;
  if (placed.kind === 'cell') {
    const at = { row: placed.at.row.index, column: placed.at.column.index };
    return { sheet, from: at, to: at };
  }
  if (placed.kind === 'range') {
    const corner = ({ row, column }: WrittenCorner) => ({ row: row.index, column: column.index });
    return { sheet, from: corner(placed.from), to: corner(placed.to) };
  }
  const last = size(sheet);
  const [low, high] = [placed.from.index, placed.to.index];
  return placed.kind === 'rows'
    ? { sheet, from: { row: low, column: 0 }, to: { row: high, column: last.columns - 1 } }
    : { sheet, from: { row: 0, column: low }, to: { row: last.rows - 1, column: high } };
}
