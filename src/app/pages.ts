/** One thing that paper does not cut: a row, a note, a figure. Heights are in CSS pixels. */
export interface Piece {
  readonly height: number;
  /** What is said once more where a page begins with it: headings of its table. */
  readonly again?: number;
  /** Stands on the page of what is before it. */
  readonly held?: boolean;
  /** Nothing to see: left out where a page begins or ends. */
  readonly blank?: boolean;
}

/** A run of rows that belong together: up to this share of a page it is not parted at all. */
const keptWhole = 0.34;

/** Where pages begin: indices of `pieces`, the first of them 0. Only what is higher than a page runs over. */
export function pagesOf(pieces: readonly Piece[], height: number): readonly number[] {
  const starts: number[] = [];
  let start = 0;
  while (start < pieces.length) {
    starts.push(start);
    start = endOf(pieces, start, height);
  }
  return starts;
}

/** The first piece of the next page. */
function endOf(pieces: readonly Piece[], start: number, height: number): number {
  let used = pieces[start]?.again ?? 0;
  let at = start;
  for (; at < pieces.length; at += 1) {
    const piece = pieces[at];
    if (!piece) break;
    if (used + piece.height > height && at > start && !piece.blank) break;
    used += piece.height;
  }
  if (at >= pieces.length) return at;
  let end = at;
  while (end > start && pieces[end]?.held) end -= 1;
  if (end <= start) end = at;
  while (pieces[end]?.blank) end += 1;
  return end;
}

/** A row of cells: `heads` is a title or captions, which stand at the head of a table. */
export interface Row {
  readonly height: number;
  readonly kind: 'blank' | 'heads' | 'says';
}

export interface RowPiece extends Piece {
  /** Rows that are said again where a page begins with this one. */
  readonly heads: readonly number[];
}

/**
 * Rows as pieces: a table begins after a blank row or with its headings. Those stay with its first two
 * rows and are said again where it goes on; its last row is never alone, and a small one is not parted.
 */
export function piecesOf(
  rows: readonly Row[],
  letters: number,
  height: number,
): readonly RowPiece[] {
  let first = 0;
  return tables(rows).flatMap((table) => {
    const begins = first;
    first += table.length;
    const says = table.findIndex(({ kind }) => kind !== 'heads');
    const count = says < 0 ? table.length : says;
    const heads = Array.from({ length: count }, (_, index) => begins + index);
    const again = letters + total(table.slice(0, count));
    const isWhole = total(table) <= keptWhole * height;
    return table.map(({ height, kind }, index): RowPiece => {
      if (kind === 'blank') return { height, again: letters, heads: [], blank: true };
      const held = index > 0 && (isWhole || index < count + 2 || index === table.length - 1);
      return index < count
        ? { height, again: letters, heads: [], held }
        : { height, again, heads, held };
    });
  });
}

function tables(rows: readonly Row[]): readonly (readonly Row[])[] {
  const found: Row[][] = [];
  rows.forEach((row, index) => {
    const before = rows[index - 1];
    const goesOn = before?.kind === row.kind || (before?.kind === 'heads' && row.kind === 'says');
    if (goesOn) found.at(-1)?.push(row);
    else found.push([row]);
  });
  return found;
}

const total = (rows: readonly Row[]): number => rows.reduce((sum, { height }) => sum + height, 0);
