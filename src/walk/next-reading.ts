import type { Spot } from '../book/look.ts';
import type { Document, Id } from '../book/types.ts';
import { passesOf } from './order.ts';

/** From one reading to the next as in Walk; from any other cell to the nearest that way. At the last one it stays. */
export function nextReading(
  document: Document,
  sheet: Id,
  from: Pick<Spot, 'row' | 'column'>,
  back: boolean,
): Spot | undefined {
  const spots = passesOf(document, sheet).flatMap(({ readings }) =>
    readings.map(({ spot }) => spot),
  );
  const ordered = back ? spots.toReversed() : spots;
  const isHere = ({ row, column }: Spot) => row === from.row && column === from.column;
  const at = ordered.findIndex(isHere);
  if (at >= 0) return ordered[at + 1] ?? ordered[at];
  const isAhead = ({ row, column }: Spot) =>
    back
      ? row < from.row || (row === from.row && column < from.column)
      : row > from.row || (row === from.row && column > from.column);
  return ordered.find(isAhead) ?? ordered.at(-1);
}
