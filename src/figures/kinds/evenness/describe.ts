import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Surroundings } from '../../figure.ts';
import { listed, said, saidNumber } from '../../kit/words.ts';
import type { Evenness } from './read.ts';
import { words } from '../../../words/words.ts';

export function describeEvenness(
  { rows, quantity, mean, highest, lowest, share, spread }: Evenness,
  { writing, tolerance }: Surroundings,
): readonly string[] {
  const all = rows.flat().flatMap(({ stops }) => stops ?? []);
  const inside = all.filter((stops) => Math.abs(stops) <= tolerance + 1e-9).length;
  const allowed = stopsInWords(tolerance);
  const three = (value: number) =>
    said(quantity, quantity === 'fNumber' ? value : Number(value.toPrecision(3)), writing);
  return [
    words.evenness.lead(
      spread < 0.005
        ? words.evenness.even
        : words.evenness.apart(stopsInWords(spread < 0.1 ? spread : tenth(spread))),
      inside === all.length
        ? words.evenness.allWithin(allowed)
        : words.evenness.within(inside, all.length, allowed),
    ),
    words.evenness.ends(three(highest.reading), highest.at, three(lowest.reading), lowest.at),
    words.evenness.meanIs(three(mean), said('share', Math.round(share * 100) / 100, writing)),
    ...rows.map((row, index) =>
      words.evenness.row(
        index + 1,
        listed(
          row.map(({ stops }) =>
            stops === undefined ? words.evenness.blank : saidNumber('stops', tenth(stops), writing),
          ),
        ),
      ),
    ),
  ];
}

/** A tenth of a stop is as near as a meter tells. */
export const tenth = (stops: number): number => Math.round(stops * 10) / 10;
