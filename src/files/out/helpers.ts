import { writeSheetPrefix } from '../../formula/sheetprefix.ts';
import type { PlainCell, PlainSheet } from '../plain/types.ts';

/**
 * A hidden sheet for parts of formulas that would be too long for other programs in one piece.
 * Each part has a cell of its own there, once.
 */
export class Helpers {
  readonly #name: string;
  readonly #cells: PlainCell[] = [];
  readonly #places = new Map<string, string>();

  constructor(name: string) {
    this.#name = name;
  }

  /** Where the part stands, as a reference from any sheet. Its own references name their sheets. */
  put(formula: string): string {
    const known = this.#places.get(formula);
    if (known !== undefined) return known;
    const row = this.#cells.length;
    this.#cells.push({ row, column: 0, value: null, formula: `=${formula}` });
    const place = `${writeSheetPrefix(this.#name)}$A$${String(row + 1)}`;
    this.#places.set(formula, place);
    return place;
  }

  /** The sheet, where anything is on it. */
  get sheet(): PlainSheet | undefined {
    if (this.#cells.length === 0) return undefined;
    const lines = { widths: new Map<number, number>(), frozenRows: 0, frozenColumns: 0 };
    return { name: this.#name, hidden: true, ...lines, cells: this.#cells };
  }
}
