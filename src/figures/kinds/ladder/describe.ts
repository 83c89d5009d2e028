import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Surroundings } from '../../figure.ts';
import { listed, said } from '../../kit/words.ts';
import type { Ladder, Rung } from './read.ts';

/** How the points stand together, then each point, then what the camera holds. */
export function describeLadder(ladder: Ladder, surroundings: Surroundings): readonly string[] {
  return [
    together(ladder.rungs),
    ...ladder.rungs.map((rung) => sentenceOf(rung, ladder, surroundings)),
    ...camera(ladder),
  ];
}

function together(rungs: readonly Rung[]): string {
  const judged = rungs.filter(({ words }) => words !== '');
  const agree = judged.filter(({ shape }) => shape === 'agrees').length;
  const off = judged
    .filter(({ shape }) => shape !== 'agrees')
    .map(({ name, words }) => `${name} ${words}`);
  const wanted = rungs.filter((rung) => rung.wanted !== undefined).length;
  const first =
    wanted > 0
      ? `${agree} of ${wanted} agree`
      : `${rungs.length} ${rungs.length === 1 ? 'point' : 'points'}`;
  const named = off.length > 4 ? [...off.slice(0, 3), `${off.length - 3} more`] : off;
  return named.length > 0 ? `${first}; ${listed(named)}.` : `${first}.`;
}

function sentenceOf(rung: Rung, { zero, signal }: Ladder, { writing }: Surroundings): string {
  const name = rung.name || 'A point without a name';
  const wanted = rung.wanted === undefined ? '' : `${from(rung.wanted, zero)} wanted`;
  if (rung.at === undefined) return `${name} waits for its reading${wanted && `, ${wanted}`}.`;
  const level =
    rung.signal !== undefined && signal && `signal ${said(signal.quantity, rung.signal, writing)}`;
  const parts = [from(rung.at, zero), wanted, rung.words, level];
  return `${name}: ${parts.filter(Boolean).join(', ')}.`;
}

/** "1 2/3 stops below key". */
function from(stops: number, zero: string): string {
  if (Math.abs(stops) < 0.005) return `at ${zero}`;
  return `${stopsInWords(stops)} ${stops > 0 ? 'above' : 'below'} ${zero}`;
}

function camera({ low, high, zero }: Ladder): readonly string[] {
  const ends = [
    high !== undefined && `clips ${from(high, zero)}`,
    low !== undefined && `loses what is ${from(low, zero)} or less`,
  ].filter((one) => one !== false);
  return ends.length > 0 ? [`The camera ${listed(ends)}.`] : [];
}
