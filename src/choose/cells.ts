import type { Spot } from '../book/look.ts';
import type { Document, Refusal } from '../book/types.ts';
import { placeNamed } from '../panels/views/place-named.ts';
import { words } from '../words/words.ts';

const most = 50;

/** Cells written as addresses, blocks and names with semicolons between, as seen from a sheet. */
export function cellsFrom(
  document: Document,
  shown: string,
  written: string,
): { readonly ok: true; readonly spots: readonly Spot[] } | Refusal {
  const spots: Spot[] = [];
  for (const part of written.split(';').filter((text) => text.trim() !== '')) {
    const found = placeNamed(document, shown, part);
    if ('reason' in found) return { ok: false, reason: found.reason };
    const { sheet, from, to = from } = found;
    for (let row = from.row; row <= to.row; row += 1)
      for (let column = from.column; column <= to.column; column += 1) {
        if (spots.length === most) return { ok: false, reason: words.choose.tooManyCells(most) };
        spots.push({ sheet, row, column });
      }
  }
  return { ok: true, spots };
}
