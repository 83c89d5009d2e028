import { findCells } from '../book/make/replace.ts';
import type { SearchFor, Target } from '../panels/shown.ts';
import { blockAddress } from '../panels/views/address.ts';
import { caption } from '../check/captions.ts';
import type { Desk } from './desk.ts';
import { words } from '../words/words.ts';

interface At {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
}

const before = (a: At, b: At) => a.sheet - b.sheet || a.row - b.row || a.column - b.column;

/** Goes to the next cell that has what is looked for, round the end, and says where it is. */
export function findNext(
  { book, session }: Desk,
  { text, matchCase, whole, everywhere }: SearchFor,
  way: 1 | -1,
  jump: (target: Target) => void,
): string {
  const { document } = book;
  const { sheet, selection } = session.state;
  const found = findCells(document, {
    find: text,
    matchCase,
    whole,
    inFormulas: true,
    ...(!everywhere && { within: { sheet } }),
  });
  if (found.length === 0) return words.app.noCellHas(text);
  const order = new Map(document.sheets.map(({ id }, index) => [id, index]));
  const asAt = (spot: { sheet: string; row: number; column: number }): At => ({
    ...spot,
    sheet: order.get(spot.sheet) ?? 0,
  });
  const here = asAt({ sheet, ...selection.focus });
  const next =
    way > 0
      ? (found.find((spot) => before(asAt(spot), here) > 0) ?? found[0])
      : (found.findLast((spot) => before(asAt(spot), here) < 0) ?? found.at(-1));
  if (!next) return '';
  const { row, column } = next;
  jump({ sheet: next.sheet, from: { row, column } });
  const named = caption(document, next.sheet, row, column);
  const where = blockAddress(next, next, 'cells');
  const said = [where, named].filter(Boolean).join(', ');
  return words.app.found(found.indexOf(next) + 1, found.length, said);
}
