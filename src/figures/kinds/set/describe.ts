import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Surroundings } from '../../figure.ts';
import { listed, said } from '../../kit/words.ts';
import type { SetPicture, SetPoint } from './read.ts';
import { amountOf, isSame, linesInWords, luxSaid, placeSaid } from './said.ts';
import { words } from '../../../words/words.ts';

/** How many points the first sentence names. */
const first = 5;

/** What each point reads, how the lines are read, what each light gives, and what a plan leaves out. */
export function describeSet(set: SetPicture, surroundings: Surroundings): readonly string[] {
  const { writing, tolerance } = surroundings;
  const { key, points, lights, lines } = set;
  const lux = (point: SetPoint) => luxSaid(point.lux, writing);
  const others = points.filter((point) => point !== key);
  const named = others.slice(0, first).map(againstKey);
  const left = others.length - named.length;
  const all = left > 0 ? [...named, words.ladder.more(left)] : named;
  const [receptor, where] = linesInWords(set, writing);
  return [
    words.set.lead(key.name, lux(key), listed(all)),
    ...(lines
      ? [`${words.set.linesAre(receptor, where)} ${words.set.hatched(stopsInWords(tolerance))}`]
      : []),
    ...points.map((point) =>
      words.set.pointAt(point.name, placeSaid(point.at, writing), lux(point), fromKey(point, key)),
    ),
    ...lights.map(({ name, at, aim, towards, placed, share }) =>
      words.set.lightAt(
        name,
        placeSaid(at, writing),
        towards && placed.lamp
          ? words.set.andFaces(placeSaid(aim, writing), placeSaid(towards, writing))
          : placeSaid(aim, writing),
        said('share', Math.round(share * 100) / 100, writing),
      ),
    ),
    words.set.clean,
  ];
}

function againstKey({ name, stops }: SetPoint): string {
  if (stops === -Infinity) return words.set.dark(name);
  if (isSame(stops)) return words.set.asKeyPoint(name);
  return stops > 0
    ? words.set.overKey(name, amountOf(stops))
    : words.set.underKey(name, amountOf(stops));
}

function fromKey(point: SetPoint, key: SetPoint): string {
  if (point === key) return words.set.isKey;
  if (point.stops === -Infinity) return words.set.noneThere;
  if (isSame(point.stops)) return words.set.sameAsKey;
  return point.stops > 0
    ? words.set.aboveKey(amountOf(point.stops))
    : words.set.belowKey(amountOf(point.stops));
}
