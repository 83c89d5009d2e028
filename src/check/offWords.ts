import type { WritingSettings } from '../../functions/quantities/settings.ts';
import { grace, verdictWords } from '../../functions/stops/verdictWords.ts';
import type { Off, OffScale } from './offs.ts';

/** What a full correction between tungsten and daylight shifts: 1/3200 K less 1/5500 K, in mired. */
const fullShift = 1e6 / 3200 - 1e6 / 5500;

/** The corrections that lamps are gelled with, by their share of a full one; common practice. */
const corrections: readonly (readonly [share: number, name: string])[] = [
  [1, 'a full'],
  [1 / 2, 'a half'],
  [1 / 4, 'a quarter'],
  [1 / 8, 'an eighth'],
];

function correction(mired: number): string {
  for (const [share, name] of corrections) {
    const times = mired / (share * fullShift);
    const near = Math.abs(times - 1) < 0.03 ? '' : times < 1 ? 'nearly ' : 'just over ';
    if (times > 0.88 && times < 1.12) return `, ${near}${name} 3200-to-5500 correction`;
  }
  return '';
}

type Words = (off: number, tolerance: number, writing: WritingSettings) => string;

const words: Readonly<Record<OffScale, Words>> = {
  stops: (off, tolerance, writing) =>
    off === -Infinity ? 'no light' : localised(verdictWords(off, tolerance), writing),
  mired: sided('warm', 'blue', (size) => `${String(Math.round(size))} mired`, correction),
  duv: sided('green', 'magenta', (size, writing) => localised(size.toFixed(4), writing)),
};

/** Words that name the side a colour is off to. */
function sided(
  plus: string,
  minus: string,
  amount: (size: number, writing: WritingSettings) => string,
  after: (size: number) => string = () => '',
): Words {
  return (off, tolerance, writing) => {
    const size = Math.abs(off);
    if (size <= tolerance + grace) return 'agrees';
    return `${amount(size, writing)} too ${off > 0 ? plus : minus}${after(size)}`;
  };
}

/** `1/3 stop over`, `120 mired too warm, nearly a full 3200-to-5500 correction`, `0.0040 too green`. */
export function offWords({ scale, by }: Off, tolerance: number, writing: WritingSettings): string {
  return words[scale](by, tolerance, writing);
}

function localised(text: string, { decimal }: WritingSettings): string {
  return decimal === '.' ? text : text.replace('.', decimal);
}
