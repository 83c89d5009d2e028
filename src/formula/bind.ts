import type { WrittenCorner, WrittenEnd } from './address.ts';
import { readFormula } from './read.ts';
import type { ReadFormula } from './read.ts';
import type {
  AxisName,
  Corner,
  Formula,
  FormulaFault,
  Id,
  Layout,
  LineEnd,
  Reference,
} from './types.ts';
import type { WrittenReference } from './written.ts';
import { words } from '../words/words.ts';

/**
 * Binds a read formula to the lines of a book, as seen from the sheet it stands on.
 * A reference beyond the limits of a sheet becomes `#REF!`; an unknown sheet is a fault.
 */
export function bind(read: ReadFormula, own: Id, layout: Layout): Formula | FormulaFault {
  const references: Reference[] = [];
  for (const written of read.references) {
    const reference = bindReference(written, own, layout);
    if ('reason' in reference) return { ...reference, at: 0 };
    references.push(reference);
  }
  return { shape: read.shape, references };
}

/** `readFormula` and `bind` in one. */
export function formulaFrom(
  text: string,
  own: Id,
  layout: Layout,
  limit?: number,
): Formula | FormulaFault {
  const read = readFormula(text, limit);
  return 'reason' in read ? read : bind(read, own, layout);
}

const lost: Reference = { kind: 'lost' };

function bindReference(
  written: WrittenReference,
  own: Id,
  layout: Layout,
): Reference | { readonly reason: string } {
  if (written.kind === 'name') return written;
  const sheet = written.sheet === undefined ? own : layout.idOfSheet(written.sheet);
  if (sheet === undefined) return { reason: words.formula.noSheet(written.sheet ?? '') };
  const explicit = written.sheet !== undefined;
  if (written.kind === 'cell') {
    const at = bindCorner(written.at, sheet, layout);
    return at ? { kind: 'cell', sheet, explicit, at } : lost;
  }
  if (written.kind === 'range') return bindRange(written, sheet, explicit, layout);
  const [low, high] = inOrder(written.from, written.to);
  const from = bindEnd(low, sheet, written.kind, layout);
  const to = bindEnd(high, sheet, written.kind, layout);
  return from && to
    ? { kind: written.kind, sheet, explicit, from, to, joint: written.joint }
    : lost;
}

function bindRange(
  written: Extract<WrittenReference, { kind: 'range' }>,
  sheet: Id,
  explicit: boolean,
  layout: Layout,
): Reference {
  const [top, bottom] = inOrder(written.from.row, written.to.row);
  const [left, right] = inOrder(written.from.column, written.to.column);
  // The far corner first: lines are minted up to it in one go.
  const to = bindCorner({ row: bottom, column: right }, sheet, layout);
  const from = to && bindCorner({ row: top, column: left }, sheet, layout);
  return from && to ? { kind: 'range', sheet, explicit, from, to, joint: written.joint } : lost;
}

function inOrder(a: WrittenEnd, b: WrittenEnd): readonly [WrittenEnd, WrittenEnd] {
  return a.index <= b.index ? [a, b] : [b, a];
}

function bindCorner(written: WrittenCorner, sheet: Id, layout: Layout): Corner | undefined {
  if (!within(written, sheet, layout)) return undefined;
  const row = bindEnd(written.row, sheet, 'rows', layout);
  const column = bindEnd(written.column, sheet, 'columns', layout);
  return row && column ? { row, column } : undefined;
}

/** Neither line is minted when one of them lies beyond the sheet. */
function within({ row, column }: WrittenCorner, sheet: Id, layout: Layout): boolean {
  return layout.has(sheet, 'rows', row.index) && layout.has(sheet, 'columns', column.index);
}

function bindEnd(
  { index, fixed }: WrittenEnd,
  sheet: Id,
  axis: AxisName,
  layout: Layout,
): LineEnd | undefined {
  const id = layout.lineAt(sheet, axis, index);
  return id === undefined ? undefined : { id, fixed };
}
