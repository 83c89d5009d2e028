import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Surroundings } from '../../figure.ts';
import { listed } from '../../kit/words.ts';
import type { Ladder, Rung } from './read.ts';
import { saidSignal } from './signal.ts';
import { words } from '../../../words/words.ts';

/** How the points stand together, then each point, then what the camera holds. */
export function describeLadder(ladder: Ladder, surroundings: Surroundings): readonly string[] {
  return [
    together(ladder.rungs),
    ...ladder.rungs.map((rung) => sentenceOf(rung, ladder, surroundings)),
    ...camera(ladder),
  ];
}

function together(rungs: readonly Rung[]): string {
  const judged = rungs.filter((rung) => rung.words !== '');
  const agree = judged.filter(({ shape }) => shape === 'agrees').length;
  const off = judged
    .filter(({ shape }) => shape !== 'agrees')
    .map((rung) => `${rung.name} ${rung.words}`);
  const wanted = rungs.filter((rung) => rung.wanted !== undefined).length;
  const first = wanted > 0 ? words.ladder.agree(agree, wanted) : words.ladder.count(rungs.length);
  const named = off.length > 4 ? [...off.slice(0, 3), words.ladder.more(off.length - 3)] : off;
  return named.length > 0 ? `${first}; ${listed(named)}.` : `${first}.`;
}

function sentenceOf(rung: Rung, { zero, signal }: Ladder, { writing }: Surroundings): string {
  const name = rung.name || words.ladder.noName;
  const wanted = rung.wanted === undefined ? '' : words.ladder.wantedAt(from(rung.wanted, zero));
  if (rung.at === undefined) return words.ladder.waits(name, wanted);
  const level =
    rung.signal !== undefined &&
    signal &&
    words.ladder.signalAt(saidSignal(signal, rung.signal, writing));
  const parts = [from(rung.at, zero), wanted, rung.words, level];
  return `${name}: ${parts.filter(Boolean).join(', ')}.`;
}

/** "1 2/3 stops below key". */
function from(stops: number, zero: string): string {
  if (Math.abs(stops) < 0.005) return words.ladder.at(zero);
  const said = stops > 0 ? words.ladder.aboveZero : words.ladder.belowZero;
  return said(stopsInWords(stops), zero);
}

function camera({ low, high, zero }: Ladder): readonly string[] {
  const ends = [
    high !== undefined && words.ladder.clips(from(high, zero)),
    low !== undefined && words.ladder.loses(from(low, zero)),
  ].filter((one) => one !== false);
  return ends.length > 0 ? [words.ladder.camera(listed(ends))] : [];
}
