import { readAmount, vulgar, vulgarFractions } from './amount.ts';
import type { Parsed, Reader } from './parsed.ts';

/** A full plus or minus green corrects what CC 30 does (common practice); the others are shares of it. */
const full = 30;

const words: Readonly<Record<string, number>> = {
  full: 1,
  half: 1 / 2,
  quarter: 1 / 4,
  eighth: 1 / 8,
  '1/2': 1 / 2,
  '1/4': 1 / 4,
  '1/8': 1 / 8,
  ...vulgarFractions,
};

const inWords = new RegExp(
  `^(?:(full|half|quarter|eighth|1/[248]|${vulgar}) )?(plus|minus) ?green$`,
  'iu',
);
const hues: Readonly<Record<string, number>> = { g: 1, green: 1, m: -1, magenta: -1 };

/** `30M`, `CC 7 G`, `CC30M`, `half minus green`; green is positive, magenta negative. */
export const readGreen: Reader = (text, settings) => {
  const said = readGreenInWords(text) ?? readWrittenGreen(text, settings, {});
  if (said !== undefined) return said;
  const amount = readAmount(text, { decimal: settings.decimal, small: true });
  if (amount === undefined || amount.fraction) return undefined;
  if (amount.rest === '') return { value: amount.value, unitWritten: false };
  const hue = hues[amount.rest.toLowerCase()];
  if (hue === undefined || amount.sign !== '') return undefined;
  return { value: hue * amount.value + 0, unitWritten: true };
};

function readGreenInWords(text: string): Parsed {
  const named = inWords.exec(text);
  if (named === null) return undefined;
  const size = full * (words[named[1]?.toLowerCase() ?? 'full'] ?? 1);
  return { value: named[2]?.toLowerCase() === 'minus' ? -size : size, unitWritten: true };
}

/** A green correction wherever it stands: it says CC. In words it may be the name of a gel. */
export const readWrittenGreen: Reader = (text, settings) => {
  const marked = /^cc ?(.*)$/iu.exec(text)?.[1] ?? text;
  const amount = readAmount(marked, { decimal: settings.decimal, small: true });
  if (amount === undefined || amount.fraction) return undefined;
  const rest = amount.rest.toLowerCase();
  const behind = rest.replace(/^cc ?/u, '');
  if (marked === text && behind === rest) return undefined;
  if (behind === '') return { value: amount.value, unitWritten: true };
  const hue = hues[behind];
  if (hue === undefined || amount.sign !== '') return undefined;
  return { value: hue * amount.value + 0, unitWritten: true };
};
