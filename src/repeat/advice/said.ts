import { stopsInWords, verdictWords } from '../../../functions/stops/verdictWords.ts';
import { writeQuantity } from '../../../functions/quantities/index.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { words } from '../../words/words.ts';
import type { Advised, LightAdvice } from './advise.ts';
import type { SetLight } from './set.ts';

/** What to set on one light, in one sentence. */
export function adviceInWords(
  { factor, ways }: LightAdvice,
  { name }: Pick<SetLight, 'name'>,
  tolerance: number,
  writing: WritingSettings,
): string {
  if (factor === 1) return words.repeat.leave(name);
  const [best] = ways;
  const stops = Math.log2(factor);
  const change =
    factor < 1e-6
      ? words.repeat.off(name)
      : stops > 0
        ? words.repeat.up(name, stopsInWords(stops))
        : words.repeat.down(name, stopsInWords(stops));
  if (!best) return words.repeat.only(change);
  const told = ways.map((way) => wayInWords(way, writing));
  const sentence = words.repeat.either(change, told);
  return Math.abs(best.leaves) <= tolerance + 1e-9
    ? sentence
    : `${sentence} ${words.repeat.notReached(verdictWords(best.leaves, 0))}`;
}

function wayInWords({ way, leaves }: Advised, writing: WritingSettings): string {
  const done = doneInWords(way, writing);
  return Math.abs(leaves) < 0.05 ? done : words.repeat.leaves(done, verdictWords(leaves, 0));
}

function doneInWords(way: Advised['way'], writing: WritingSettings): string {
  if (way.kind === 'pieces') return words.repeat.pieces([...way.into], [...way.out]);
  const quantity = way.kind === 'output' ? 'share' : 'length';
  const digits = way.kind === 'output' ? 1000 : 100;
  const say = (value: number) =>
    writeQuantity(quantity, Math.round(value * digits) / digits, writing).text;
  if (way.kind === 'output') return words.repeat.dim(say(way.from), say(way.to));
  return way.to > way.from
    ? words.repeat.farther(say(way.from), say(way.to))
    : words.repeat.nearer(say(way.from), say(way.to));
}
