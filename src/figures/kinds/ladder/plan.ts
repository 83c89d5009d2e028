import { max, min } from 'd3-array';
import { scaleLinear } from 'd3-scale';
import type { Size, Surroundings } from '../../figure.ts';
import type { Box } from '../../kit/ground.ts';
import type { Theme } from '../../kit/theme.ts';
import { saidNumber, widthOf } from '../../kit/words.ts';
import { saidSignal } from './signal.ts';
import type { Ladder, Rung } from './read.ts';

/** Below this many letters across, a name stands over its rung and no longer beside it. */
const narrowBelow = 46;

/** Where everything of a ladder stands. */
export interface Plan extends Surroundings {
  readonly ladder: Ladder;
  readonly theme: Theme;
  readonly letters: number;
  readonly small: number;
  readonly width: number;
  readonly narrow: boolean;
  readonly box: Box;
  /** The ground behind the rungs: one for all, or a strip for each where names stand between. */
  readonly strips: readonly Box[];
  x(stops: number): number;
  /** Middle of a rung. */
  y(index: number): number;
}

export function planOf(
  ladder: Ladder,
  theme: Theme,
  { width, letters }: Size,
  surroundings: Surroundings,
): Plan {
  const { rungs } = ladder;
  const narrow = width < narrowBelow * letters;
  const widest = (texts: readonly string[]) => max(texts, (text) => widthOf(text, letters)) ?? 0;
  const names = Math.min(widest(rungs.map(({ name }) => name)), width * 0.26) + letters;
  const sides = rungs.map((rung) => sideWords(rung, ladder, surroundings));
  const behind = Math.min(widest(sides), width * 0.34) + letters;
  const top =
    letters *
    ((ladder.signal ? 3.2 : 0) +
      (ladder.high === undefined && ladder.low === undefined ? 0.6 : 1.9));
  const step = letters * (narrow ? 3.2 : 2.2);
  const box: Box = {
    left: narrow ? letters : names,
    right: width - (narrow ? letters : behind),
    top,
    bottom: top + step * rungs.length + letters * 0.4,
  };
  const scale = scaleLinear(domainOf(ladder, surroundings.tolerance), [box.left, box.right]);
  const y = (index: number) => top + letters * 0.2 + step * (index + (narrow ? 0.74 : 0.5));
  const strip = (middle: number): Box => ({
    ...box,
    top: middle - letters * 0.75,
    bottom: middle + letters * 0.75,
  });
  return {
    ...surroundings,
    ...{ ladder, theme, letters, width, narrow, box, y },
    strips: narrow ? rungs.map((_, index) => strip(y(index))) : [box],
    small: letters * 0.88,
    x: (stops) => scale(stops),
  };
}

/** Whole stops around everything that is drawn. */
export function domainOf(
  { rungs, low, high }: Ladder,
  tolerance: number,
): readonly [number, number] {
  const all = [
    0,
    ...rungs.flatMap(({ at, wanted }) => [
      ...(at === undefined ? [] : [at]),
      ...(wanted === undefined ? [] : [wanted - tolerance, wanted + tolerance]),
    ]),
    ...[low, high].filter((end) => end !== undefined),
  ];
  return [Math.floor((min(all) ?? 0) - 0.4), Math.ceil((max(all) ?? 0) + 0.4)];
}

/** "−1 2/3 · 1/3 stop over · 34 %". */
export function sideWords(rung: Rung, { signal }: Ladder, { writing }: Surroundings): string {
  if (rung.at === undefined) return rung.words;
  const parts = [
    saidNumber('stops', rung.at, writing),
    rung.words,
    rung.signal !== undefined && signal && saidSignal(signal, rung.signal, writing),
  ];
  return parts.filter(Boolean).join(' · ');
}
