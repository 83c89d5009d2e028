import type { WrittenCorner, WrittenEnd } from '../formula/address.ts';
import type { WrittenReference } from '../formula/written.ts';
import type { FunctionError } from '../../functions/values.ts';
import type { Document } from '../book/types.ts';
import type { AxisName, Corner, Id, Layout, LineEnd, Node, Reference } from '../formula/types.ts';
import { extentOf } from '../formula/write.ts';
import type { CellBlock } from './types.ts';
import { words } from '../words/words.ts';

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
  /** A name that stands for a constant or a formula. */
  | { readonly kind: 'expression'; readonly tree: Node; readonly references: readonly Placed[] }
  /** Nothing to refer to, and why. */
  | { readonly kind: 'refused'; readonly error: FunctionError };

export type PlacedCells = Exclude<Placed, { readonly kind: 'expression' | 'refused' }>;

export const lost: Placed = {
  kind: 'refused',
  error: { code: '#REF!', message: words.engine.cellDeleted },
};

/** Where a reference to cells points now. */
export function placeCells(
  reference: Exclude<Reference, { readonly kind: 'name' }>,
  layout: Layout,
): Placed {
  if (reference.kind === 'lost') return lost;
  const extent = extentOf(reference, layout);
  if (!extent) return lost;
  const { sheet, top, left, bottom, right } = extent;
  if (reference.kind === 'cell')
    return { kind: 'cell', sheet, at: corner(reference.at, top, left) };
  const { kind, from, to } = reference;
  if (kind === 'range')
    return { kind, sheet, from: corner(from, top, left), to: corner(to, bottom, right) };
  const [first, last] = kind === 'rows' ? [top, bottom] : [left, right];
  return { kind, sheet, from: end(from, first), to: end(to, last) };
}

function end({ fixed }: LineEnd, index: number): WrittenEnd {
  return { index, fixed };
}

function corner({ row, column }: Corner, top: number, left: number): WrittenCorner {
  return { row: end(row, top), column: end(column, left) };
}

/** Whether every line that a reference names is still on its sheet. */
export function isWhole(reference: Reference, layout: Layout): boolean {
  if (reference.kind === 'name') return true;
  if (reference.kind === 'lost') return false;
  const { kind, sheet } = reference;
  if (layout.nameOfSheet(sheet) === undefined) return false;
  const there = (axis: AxisName, { id }: LineEnd) => layout.indexOf(sheet, axis, id) >= 0;
  const both = ({ row, column }: Corner) => there('rows', row) && there('columns', column);
  if (kind === 'cell') return both(reference.at);
  if (kind === 'range') return both(reference.from) && both(reference.to);
  return there(kind, reference.from) && there(kind, reference.to);
}

/** Where a reference points that was just read from a text, seen from the sheet `own`. */
export function placeWrittenCells(
  written: Exclude<WrittenReference, { readonly kind: 'name' }>,
  own: Id,
  sheetNamed: (name: string) => Id | undefined,
): Placed {
  const sheet = written.sheet === undefined ? own : sheetNamed(written.sheet);
  if (sheet === undefined) {
    const message = words.formula.noSheet(written.sheet ?? '');
    return { kind: 'refused', error: { code: '#REF!', message } };
  }
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
export function blockOf(placed: Placed, document: Document): CellBlock | undefined {
  if (placed.kind === 'expression' || placed.kind === 'refused') return undefined;
  return { sheet: placed.sheet, ...cornersOf(placed, document) };
}

function cornersOf(placed: PlacedCells, document: Document): Pick<CellBlock, 'from' | 'to'> {
  const at = ({ row, column }: WrittenCorner) => ({ row: row.index, column: column.index });
  if (placed.kind === 'cell') return { from: at(placed.at), to: at(placed.at) };
  if (placed.kind === 'range') return { from: at(placed.from), to: at(placed.to) };
  const { rows, columns } = document.sheet(placed.sheet) ?? { rows: nothing, columns: nothing };
  const [low, high] = [placed.from.index, placed.to.index];
  return placed.kind === 'rows'
    ? { from: { row: low, column: 0 }, to: { row: high, column: columns.length - 1 } }
    : { from: { row: 0, column: low }, to: { row: rows.length - 1, column: high } };
}

const nothing = { length: 0 };
