import type { Document, Means } from '../types.ts';
import { cellAtSpot, quantityAt, placeAt } from '../look.ts';
import type { Spot } from '../look.ts';
import type { Source } from './copy.ts';
import { pourCells } from './copy.ts';
import type { Entered } from './entered.ts';
import type { Region } from './growing.ts';
import type { Made } from './made.ts';
import { refused } from './made.ts';
import { continued } from './series.ts';
import { words } from '../../words/words.ts';

export type Direction = 'down' | 'up' | 'right' | 'left';

/**
 * Drags cells on: `count` more rows or columns beside `from`. Formulas adjust their references.
 * Two or more plain numbers in equal steps go on (`1`, `2` → `3`; `10 m`, `20 m` → `30 m`);
 * everything else repeats, texts that end in a number too.
 */
export function fillCells(
  document: Document,
  means: Means,
  from: Region,
  direction: Direction,
  count: number,
): Made {
  const target = beside(from, direction, count);
  if (target.top < 0 || target.left < 0) return refused(words.book.nothingBeyond);
  const along = direction === 'down' || direction === 'up';
  const size = along ? from.height : from.width;
  const backwards = direction === 'up' || direction === 'left';
  const runs = new Map<number, (step: number) => Entered | undefined>();
  const runAt = (across: number) => {
    const known = runs.get(across) ?? seriesOf(document, means, from, along, across);
    runs.set(across, known);
    return known;
  };
  return pourCells(document, means, target, words.book.fill(direction), (i, j): Source => {
    const across = along ? j : i;
    const position = along ? i : j;
    // Steps from the first source cell: size, size + 1, … onwards, or -1, -2, … backwards.
    const step = backwards ? position - count : size + position;
    const at = ((step % size) + size) % size;
    const instead = runAt(across)(step);
    return {
      sheet: from.sheet,
      row: from.top + (along ? at : across),
      column: from.left + (along ? across : at),
      what: 'all',
      ...(instead && { instead }),
    };
  });
}

function beside(from: Region, direction: Direction, count: number): Region {
  const regions: Readonly<Record<Direction, Partial<Region>>> = {
    down: { top: from.top + from.height, height: count },
    up: { top: from.top - count, height: count },
    right: { left: from.left + from.width, width: count },
    left: { left: from.left - count, width: count },
  };
  return { ...from, ...regions[direction] };
}

/** The series that one row or column of the source makes; gives nothing where there is none. */
function seriesOf(
  document: Document,
  means: Means,
  from: Region,
  along: boolean,
  across: number,
): (step: number) => Entered | undefined {
  const spots = Array.from({ length: along ? from.height : from.width }, (_, i): Spot => ({
    sheet: from.sheet,
    row: from.top + (along ? i : across),
    column: from.left + (along ? across : i),
  }));
  const cells = spots.map((spot) => cellAtSpot(document, spot));
  const [first] = cells;
  const texts = cells.map((cell) => (cell?.content.kind === 'number' ? cell.typed : undefined));
  const alike = cells.every(
    (cell) => cell?.under === first?.under && cell?.quantity === first?.quantity,
  );
  const goOn = alike ? continued(texts) : undefined;
  const [spot] = spots;
  const place = spot && placeAt(document, spot);
  const quantity = place && quantityAt(document, place);
  return (step) => {
    const typed = goOn?.(step);
    const under = first?.under;
    if (typed === undefined || !under) return undefined;
    const read = means.readEntry(typed, quantity, { ...document.settings, ...under });
    return 'reason' in read ? undefined : { content: read.content, typed, under };
  };
}
