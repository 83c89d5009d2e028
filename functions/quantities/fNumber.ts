import { exactMark, isMark } from '../marks/index.ts';
import { readAmount, vulgar, vulgarFractions } from './amount.ts';
import { readNumber } from './number.ts';
import type { Reader } from './parsed.ts';

const number = '(\\d{1,3}(?:[.,]\\d+)?|[.,]\\d+)';
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const letter = /^([ft](?: ?[/:])?|ƒ ?\/?) ?(?=[\d.,])/iu;
const mark = new RegExp(`^${number}`, 'u');
const splitMarks = new RegExp(`^${number} ?(?:/ ?${number}(?: split)?|- ?${number} split)$`, 'u');
const fractionBehind = new RegExp(
  `^(?: |(?: ?(?:\\+|-|and |&) ?))?(?:(?<!^)0?[.,]\\d{1,2}|(?<!^)0|\\d+ ?/ ?\\d+|${vulgar})$`,
  'u',
);

/**
 * f-numbers as people say them. A mark means its exact value; behind it may stand thirds, halves or
 * tenths of a stop (`2.8 1/3`, `2.8½`, `1.4+0.4`, `5.6⁵`); `2.8/4` lies half-way between two marks.
 */
export const readFNumber: Reader = (text) => {
  const bare = text.replace(letter, '');
  const unitWritten = bare !== text;
  const fNumber = readSplit(bare) ?? readMarkAndFraction(bare);
  return fNumber === undefined ? undefined : { value: fNumber, unitWritten };
};

/** Text that is an f-number wherever it stands: `f/4`, `T2.8`; not `F4`, which may be anything. */
export const readWrittenFNumber: Reader = (text, settings, context) =>
  /^(?:[ft] ?\/|ƒ|[ft] ?\d{1,2}[.,]\d)/iu.test(text)
    ? readFNumber(text, settings, context)
    : undefined;

function readMarkAndFraction(text: string): number | undefined {
  const found = mark.exec(text);
  if (found === null) return undefined;
  const behind = text.slice(found[0].length).replace(/ ?stops?$/u, '');
  const stops = readBehind(behind);
  const fNumber = numberOf(found[1]) ?? 0;
  return stops === undefined || fNumber === 0 ? undefined : exactMark(fNumber) * 2 ** (stops / 2);
}

/** Less than a stop, above or below the mark. */
function readBehind(text: string): number | undefined {
  if (text === '') return 0;
  const tenths = superscripts.indexOf(text);
  if (tenths >= 0) return tenths / 10;
  if (!fractionBehind.test(text)) return undefined;
  const size = text.trim().replace(/^(?:\+|-|and |&) ?/u, '');
  const stops =
    vulgarFractions[size] ?? readAmount(size, { decimal: '.', small: true })?.value ?? 1;
  if (stops >= 1) return undefined;
  return text.startsWith('-') || text.startsWith(' -') ? -stops : stops;
}

/** A split lies between neighbouring marks, so `1/50` and `2.81/3` (a space forgotten) are none. */
function readSplit(text: string): number | undefined {
  const found = splitMarks.exec(text);
  const one = numberOf(found?.[1]);
  const other = numberOf(found?.[2] ?? found?.[3]);
  if (one === undefined || other === undefined || !isMark(one) || !isMark(other)) return undefined;
  const stopsApart = Math.abs(2 * Math.log2(exactMark(other) / exactMark(one)));
  if (stopsApart === 0 || stopsApart > 1 + 1e-9) return undefined;
  return Math.sqrt(exactMark(one) * exactMark(other));
}

function numberOf(written: string | undefined): number | undefined {
  return readNumber(written ?? '', { decimal: '.', small: true });
}
