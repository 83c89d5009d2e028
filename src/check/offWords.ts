import type { WritingSettings } from '../../functions/quantities/settings.ts';
import { grace, verdictWords } from '../../functions/stops/verdictWords.ts';
import type { Off, OffScale } from './offs.ts';
import { words } from '../words/words.ts';

/** What a full correction between tungsten and daylight shifts: 1/3200 K less 1/5500 K, in mired. */
const fullShift = 1e6 / 3200 - 1e6 / 5500;

/** The corrections that lamps are gelled with, by their share of a full one; common practice. */
const corrections: readonly (readonly [share: number, name: string])[] = [
  [1, words.check.full],
  [1 / 2, words.check.half],
  [1 / 4, words.check.quarter],
  [1 / 8, words.check.eighth],
];

function correction(mired: number): string {
  for (const [share, name] of corrections) {
    const times = mired / (share * fullShift);
    if (times <= 0.88 || times >= 1.12) continue;
    if (Math.abs(times - 1) < 0.03) return `, ${words.check.correction(name)}`;
    return `, ${times < 1 ? words.check.nearlyCorrection(name) : words.check.overCorrection(name)}`;
  }
  return '';
}

type Saying = (off: number, tolerance: number, writing: WritingSettings) => string;
type Side = (amount: string) => string;

const sayings: Readonly<Record<OffScale, Saying>> = {
  stops: (off, tolerance, writing) =>
    off === -Infinity ? words.check.noLight : localised(verdictWords(off, tolerance), writing),
  mired: sided(
    words.check.tooWarm,
    words.check.tooBlue,
    (size) => words.check.mired(Math.round(size)),
    correction,
  ),
  duv: sided(words.check.tooGreen, words.check.tooMagenta, (size, writing) =>
    localised(size.toFixed(4), writing),
  ),
};

/** Words that name the side a colour is off to. */
function sided(
  plus: Side,
  minus: Side,
  amount: (size: number, writing: WritingSettings) => string,
  after: (size: number) => string = () => '',
): Saying {
  return (off, tolerance, writing) => {
    const size = Math.abs(off);
    if (size <= tolerance + grace) return 'agrees';
    const side = off > 0 ? plus : minus;
    return `${side(amount(size, writing))}${after(size)}`;
  };
}

/** `1/3 stop over`, `120 mired too warm, nearly a full 3200-to-5500 correction`, `green by 0.0040`. */
export function offWords({ scale, by }: Off, tolerance: number, writing: WritingSettings): string {
  return sayings[scale](by, tolerance, writing);
}

function localised(text: string, { decimal }: WritingSettings): string {
  return decimal === '.' ? text : text.replace('.', decimal);
}
