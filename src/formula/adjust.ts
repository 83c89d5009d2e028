import type { AxisName, Corner, Formula, Id, Layout, LineEnd, Reference } from './types.ts';
import { extentOf } from './write.ts';

const lost: Reference = { kind: 'lost' };

/** The formula with each reference replaced; the same formula when nothing changes. */
export function mapReferences(
  formula: Formula,
  replace: (reference: Reference) => Reference,
): Formula {
  const references = formula.references.map(replace);
  const same = references.every((reference, slot) => reference === formula.references[slot]);
  return same ? formula : { shape: formula.shape, references };
}

/** A copy: from which sheet to which, and how far down and to the right. */
export interface Shift {
  readonly from: Id;
  readonly to: Id;
  readonly rows: number;
  readonly columns: number;
}

/**
 * The formula as a copy of it reads elsewhere: relative references shift, fixed ones stay, and a
 * reference without a written sheet means the sheet the copy stands on. Off the sheet is `#REF!`.
 */
export function shiftFormula(formula: Formula, shift: Shift, layout: Layout): Formula {
  return mapReferences(formula, (reference) => shiftReference(reference, shift, layout));
}

function shiftReference(reference: Reference, shift: Shift, layout: Layout): Reference {
  if (reference.kind === 'name' || reference.kind === 'lost') return reference;
  const extent = extentOf(reference, layout);
  if (!extent) return lost;
  const sheet = reference.explicit || reference.sheet !== shift.from ? reference.sheet : shift.to;
  const place = (axis: AxisName, end: LineEnd, index: number): LineEnd | undefined => {
    const moved = end.fixed ? index : index + shift[axis];
    const id = layout.has(sheet, axis, moved) ? layout.lineAt(sheet, axis, moved) : undefined;
    return id === undefined ? undefined : { id, fixed: end.fixed };
  };
  const corner = (at: Corner, top: number, left: number): Corner | undefined => {
    const row = place('rows', at.row, top);
    const column = row && place('columns', at.column, left);
    return row && column && { row, column };
  };
  if (reference.kind === 'cell') {
    const at = corner(reference.at, extent.top, extent.left);
    return at ? { ...reference, sheet, at } : lost;
  }
  if (reference.kind === 'range') {
    const from = corner(reference.from, extent.top, extent.left);
    const to = corner(reference.to, extent.bottom, extent.right);
    return from && to ? upright({ ...reference, sheet, from, to }, layout) : lost;
  }
  const axis = reference.kind;
  const [low, high] = axis === 'rows' ? [extent.top, extent.bottom] : [extent.left, extent.right];
  const from = place(axis, reference.from, low);
  const to = place(axis, reference.to, high);
  return from && to ? { ...reference, sheet, ...inOrder(from, to, sheet, axis, layout) } : lost;
}

type Range = Extract<Reference, { kind: 'range' }>;

/** `A$5:A1` filled down turns over: the corners are put top left and bottom right again. */
function upright(range: Range, layout: Layout): Range {
  const rows = inOrder(range.from.row, range.to.row, range.sheet, 'rows', layout);
  const columns = inOrder(range.from.column, range.to.column, range.sheet, 'columns', layout);
  return {
    ...range,
    from: { row: rows.from, column: columns.from },
    to: { row: rows.to, column: columns.to },
  };
}

function inOrder(a: LineEnd, b: LineEnd, sheet: Id, axis: AxisName, layout: Layout) {
  const turned = layout.indexOf(sheet, axis, a.id) > layout.indexOf(sheet, axis, b.id);
  return turned ? { from: b, to: a } : { from: a, to: b };
}

/**
 * The reference without gone lines: each gone corner gives way to the nearest living line inside.
 * What leads nowhere any more is lost.
 */
export function settled(reference: Reference, layout: Layout): Reference {
  if (reference.kind === 'name' || reference.kind === 'lost') return reference;
  const extent = extentOf(reference, layout);
  if (!extent) return lost;
  if (reference.kind === 'cell') return reference;
  const { sheet } = reference;
  const end = (axis: AxisName, before: LineEnd, index: number): LineEnd => {
    const id = layout.lineAt(sheet, axis, index) ?? before.id;
    return id === before.id ? before : { ...before, id };
  };
  if (reference.kind === 'range') {
    const { from, to } = reference;
    const row = { from: end('rows', from.row, extent.top), to: end('rows', to.row, extent.bottom) };
    const column = {
      from: end('columns', from.column, extent.left),
      to: end('columns', to.column, extent.right),
    };
    return {
      ...reference,
      from: { row: row.from, column: column.from },
      to: { row: row.to, column: column.to },
    };
  }
  const { kind, from, to } = reference;
  const [low, high] = kind === 'rows' ? [extent.top, extent.bottom] : [extent.left, extent.right];
  return { ...reference, from: end(kind, from, low), to: end(kind, to, high) };
}
