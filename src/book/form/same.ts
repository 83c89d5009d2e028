import { formulaToJson } from '../../formula/codec.ts';
import type { Cell, EntrySettings } from '../types.ts';
import { cellToJson } from './cells.ts';

const writer = {
  formula: formulaToJson,
  under: (under: EntrySettings | undefined) => under,
};

/** A cell as JSON with references by id, so that equal cells of two documents are equal texts. */
export const plainCell = (cell: Cell): ReturnType<typeof cellToJson> => cellToJson(cell, writer);

/** Whether two cells, of one document or of two, are the same in everything. */
export function sameCell(a: Cell | undefined, b: Cell | undefined): boolean {
  if (a === b) return true;
  return (
    a !== undefined &&
    b !== undefined &&
    JSON.stringify(plainCell(a)) === JSON.stringify(plainCell(b))
  );
}

/** Whether two values that JSON can say are said alike. */
export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);
