import { writeColumn, writeCorner, writeRow } from './address.ts';
import { writeSheetPrefix } from './sheetprefix.ts';
import type { Corner, Formula, Id, Layout, LineEnd, Reference } from './types.ts';

export const lostText = '#REF!';

/**
 * The formula in A1 form, as seen from the sheet it stands on. `own` `null` writes every reference
 * with its sheet, as for a name or an engine that has no sheet in view.
 */
export function writeFormula(formula: Formula, own: Id | null, layout: Layout): string {
  const { pieces } = formula.shape;
  let text = pieces[0] ?? '';
  formula.references.forEach((reference, slot) => {
    text += writeReference(reference, own, layout) + (pieces[slot + 1] ?? '');
  });
  return text;
}

/** One reference in A1 form. */
export function writeReference(reference: Reference, own: Id | null, layout: Layout): string {
  if (reference.kind === 'lost') return lostText;
  if (reference.kind === 'name') return layout.spellingOf(reference.name) ?? reference.name;
  const name = layout.nameOfSheet(reference.sheet);
  const address = name === undefined ? undefined : writeAddress(reference, layout);
  if (name === undefined || address === undefined) return lostText;
  const prefixed = reference.explicit || reference.sheet !== own;
  return (prefixed ? writeSheetPrefix(name) : '') + address;
}

/** Where a reference to cells lies now, in indices of living lines; `undefined` where it is lost. */
export interface Extent {
  readonly sheet: Id;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

type Addressed = Exclude<Reference, { kind: 'name' | 'lost' }>;

function writeAddress(reference: Addressed, layout: Layout): string | undefined {
  const extent = extentOf(reference, layout);
  if (!extent) return undefined;
  const { top, left, bottom, right } = extent;
  if (reference.kind === 'cell') return corner(reference.at, top, left);
  const { joint } = reference;
  if (reference.kind === 'range')
    return corner(reference.from, top, left) + joint + corner(reference.to, bottom, right);
  return reference.kind === 'columns'
    ? column(reference.from, left) + joint + column(reference.to, right)
    : row(reference.from, top) + joint + row(reference.to, bottom);
}

const row = ({ fixed }: LineEnd, index: number) => writeRow({ index, fixed });
const column = ({ fixed }: LineEnd, index: number) => writeColumn({ index, fixed });
const corner = (at: Corner, top: number, left: number) =>
  writeCorner({
    row: { index: top, fixed: at.row.fixed },
    column: { index: left, fixed: at.column.fixed },
  });

/** Whole columns reach from row 0 to `Infinity`, whole rows likewise. */
export function extentOf(reference: Reference, layout: Layout): Extent | undefined {
  if (reference.kind === 'name' || reference.kind === 'lost') return undefined;
  const { sheet } = reference;
  if (layout.nameOfSheet(sheet) === undefined) return undefined;
  if (reference.kind === 'cell') {
    const top = layout.indexOf(sheet, 'rows', reference.at.row.id);
    const left = layout.indexOf(sheet, 'columns', reference.at.column.id);
    return top < 0 || left < 0 ? undefined : { sheet, top, left, bottom: top, right: left };
  }
  const all = { from: 0, to: Infinity };
  const rows =
    reference.kind === 'columns' ? all : spanOf(layout, sheet, 'rows', ends(reference, 'row'));
  const columns =
    reference.kind === 'rows' ? all : spanOf(layout, sheet, 'columns', ends(reference, 'column'));
  return rows && columns
    ? { sheet, top: rows.from, left: columns.from, bottom: rows.to, right: columns.to }
    : undefined;
}

function ends(reference: Exclude<Addressed, { kind: 'cell' }>, axis: 'row' | 'column') {
  return reference.kind === 'range'
    ? { from: reference.from[axis], to: reference.to[axis] }
    : reference;
}

function spanOf(
  layout: Layout,
  sheet: Id,
  axis: 'rows' | 'columns',
  { from, to }: { readonly from: LineEnd; readonly to: LineEnd },
): { from: number; to: number } | undefined {
  const low = layout.nearest(sheet, axis, from.id, 'from');
  const high = layout.nearest(sheet, axis, to.id, 'to');
  return low >= 0 && low <= high ? { from: low, to: high } : undefined;
}
