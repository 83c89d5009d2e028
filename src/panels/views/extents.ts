import { precedentsOf } from '../../book/look.ts';
import type { Document, Formula } from '../../book/types.ts';
import type { Extent } from '../../formula/write.ts';
import type { Target } from '../shown.ts';

/** Where the first reference of a formula lies. */
export function firstExtent(document: Document, formula: Formula): Extent | undefined {
  const first = precedentsOf(document, formula)[0];
  return first?.kind === 'cells' ? first.extent : undefined;
}

/** Whole rows and columns are gone to by their first cell. */
export function targetOf({ sheet, top, left, bottom, right }: Extent): Target {
  const from = { row: top, column: left };
  return Number.isFinite(bottom) && Number.isFinite(right)
    ? { sheet, from, to: { row: bottom, column: right } }
    : { sheet, from };
}
