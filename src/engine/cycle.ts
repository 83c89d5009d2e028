import { cellAt, dependentsOf, placeAt, spotOf, type Spot } from '../book/look.ts';
import type { Document, Place } from '../book/types.ts';

const keyOf = ({ sheet, row, column }: Place) => `${sheet} ${row} ${column}`;

/** Far enough to find any round that a person made; a sheet without end is not searched. */
const searched = 10_000;

/** The shortest way from a cell through those that read it and back, the cell first. */
export function cycleThrough(document: Document, spot: Spot): readonly Spot[] {
  const start = placeAt(document, spot);
  if (!start) return [spot];
  const cameFrom = new Map<string, Place>();
  const queue: Place[] = [start];
  for (let next = 0; next < queue.length && next < searched; next++) {
    const place = queue[next] as Place;
    for (const { kind, place: reader } of dependentsOf(document, place)) {
      if (kind !== 'formula') continue;
      if (keyOf(reader) === keyOf(start)) return wayTo(document, place, start, cameFrom);
      if (cameFrom.has(keyOf(reader)) || !cellAt(document, reader)) continue;
      cameFrom.set(keyOf(reader), place);
      queue.push(reader);
    }
  }
  return [spot];
}

function wayTo(
  document: Document,
  last: Place,
  start: Place,
  cameFrom: ReadonlyMap<string, Place>,
): readonly Spot[] {
  const way: Place[] = [];
  for (let place: Place | undefined = last; place; place = cameFrom.get(keyOf(place))) {
    way.push(place);
    if (keyOf(place) === keyOf(start)) break;
  }
  return way.toReversed().flatMap((place) => spotOf(document, place) ?? []);
}
