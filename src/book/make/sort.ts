import { placeAt } from '../look.ts';
import type { Document, Place } from '../types.ts';
import type { Region } from './growing.ts';
import type { Made } from './made.ts';
import { made, refused } from './made.ts';
import { words } from '../../words/words.ts';

export interface SortKey {
  /** Position of the column on the sheet, from 0. */
  readonly column: number;
  readonly descending?: boolean;
}

/** What a cell comes to: the engine's, as far as sorting needs it. Anything else is an error. */
export type SortValue = number | string | boolean | null | undefined | { readonly code?: unknown };

/**
 * Sorts the rows of a region: numbers, then texts, then truths, then errors; blanks last either way.
 * Rows that agree keep their order.
 */
export function sortRegion(
  document: Document,
  region: Region,
  keys: readonly SortKey[],
  valueOf: (place: Place) => SortValue,
  compareText: (a: string, b: string) => number = byLetters,
): Made {
  const sheet = document.sheet(region.sheet);
  if (!sheet) return refused(words.book.sheetGone);
  const rows = sheet.rows.ids.slice(region.top, region.top + region.height);
  const columns = sheet.columns.ids.slice(region.left, region.left + region.width);
  const values = keys.map(({ column }) =>
    rows.map((_, i) => {
      const place = placeAt(document, { sheet: sheet.id, row: region.top + i, column });
      return place ? valueOf(place) : null;
    }),
  );
  const order = rows
    .map((_, i) => i)
    .toSorted((a, b) => {
      for (const [k, { descending = false }] of keys.entries()) {
        const difference = compare(values[k]?.[a], values[k]?.[b], descending, compareText);
        if (difference !== 0) return difference;
      }
      return a - b;
    });
  const block = { sheet: sheet.id, rows, columns };
  const still = order.every((from, to) => from === to) || columns.length === 0;
  return made(words.book.sort, still ? [] : [{ kind: 'sort', block, order }], block);
}

const ranks: Readonly<Record<string, number>> = { number: 0, string: 1, boolean: 2, object: 3 };

function rankOf(value: SortValue): number {
  return value === null || value === undefined || value === '' ? 4 : (ranks[typeof value] ?? 3);
}

function compare(
  a: SortValue,
  b: SortValue,
  descending: boolean,
  compareText: (a: string, b: string) => number,
): number {
  const [left, right] = [rankOf(a), rankOf(b)];
  const turn = descending ? -1 : 1;
  if (left === 4 || right === 4) return left - right;
  if (left !== right) return turn * (left - right);
  if (typeof a === 'string' && typeof b === 'string') return turn * compareText(a, b);
  return left === 3 ? 0 : turn * (Number(a) - Number(b));
}

/** Without regard to case and accents; the same everywhere. */
function byLetters(a: string, b: string): number {
  const [left, right] = [a, b].map((text) =>
    text.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase(),
  );
  if (left === undefined || right === undefined || left === right) return 0;
  return left < right ? -1 : 1;
}
