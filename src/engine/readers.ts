import { cellAt, dependentsOf, placeAt, spotOf } from '../book/look.ts';
import { draftOf } from '../book/inside/opened.ts';
import type { Document, Place } from '../book/types.ts';
import type { CellPlace } from './types.ts';

const keyOf = ({ sheet, row, column }: Place) => `${sheet} ${row} ${column}`;

/** Formulas looked through at most; each cell on a sheet with many ranges costs as many. */
const most = 200_000;

/**
 * These cells and all that read them, however far down, but not past cells that `ends` says depend
 * on nothing. Undefined if there are too many to be worth it.
 */
export function readersOf(
  document: Document,
  spots: readonly CellPlace[],
  ends: (spot: CellPlace) => boolean,
): readonly CellPlace[] | undefined {
  const { uses } = draftOf(document);
  const found = new Map<string, { place: Place; spot: CellPlace }>();
  const queue: Place[] = [];
  const reach = (place: Place) => {
    const spot = found.has(keyOf(place)) ? undefined : spotOf(document, place);
    if (!spot) return;
    found.set(keyOf(place), { place, spot });
    queue.push(place);
  };
  for (const spot of spots) {
    const place = placeAt(document, spot);
    if (place) reach(place);
  }
  let looked = 0;
  for (let next = 0; next < queue.length; next++) {
    const place = queue[next] as Place;
    const entry = found.get(keyOf(place));
    // The cells that were touched have other readers than before, whatever they say they measure.
    if (next >= spots.length && entry && ends(entry.spot)) continue;
    looked += 10 + uses.rangingOver(place.sheet).size;
    if (looked > most) return undefined;
    for (const { kind, place: reader } of dependentsOf(document, place))
      if (kind === 'formula' && cellAt(document, reader)) reach(reader);
  }
  return [...found.values()].map(({ spot }) => spot);
}
