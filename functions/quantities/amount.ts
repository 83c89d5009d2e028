import { readNumber } from './number.ts';
import type { NumberRule } from './number.ts';

/** The front of an entry: how much, and what stands behind it. */
export interface Amount {
  readonly value: number;
  readonly sign: '+' | '-' | '';
  /** Written as `1/3`, `1 1/3` or `⅔`. */
  readonly fraction: boolean;
  /** What follows, trimmed: usually a unit. */
  readonly rest: string;
}

export const vulgarFractions: Readonly<Record<string, number>> = {
  '½': 1 / 2,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '¼': 1 / 4,
  '¾': 3 / 4,
  '⅕': 1 / 5,
  '⅖': 2 / 5,
  '⅗': 3 / 5,
  '⅘': 4 / 5,
  '⅙': 1 / 6,
  '⅚': 5 / 6,
  '⅐': 1 / 7,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
  '⅑': 1 / 9,
  '⅒': 1 / 10,
};

export const vulgar = `[${Object.keys(vulgarFractions).join('')}]`;

const digits = "(?:\\d+(?:[ ']\\d{3}(?!\\d))*(?:[.,]\\d+)*[.,]?|[.,]\\d+)(?:[eE][+-]?\\d+)?";
const over = '(\\d+) ?/ ?(\\d+(?:[.,]\\d+)?)';
const pattern = new RegExp(
  `^([+-]?) ?(?:${over}|(${digits})(?: ?(?:(?:and |& )?${over}|(${vulgar})))?|(${vulgar}))(.*)$`,
  'u',
);

/** Splits `-1 2/3 stops` into −1.667 and "stops". Undefined when no number stands in front. */
export function readAmount(text: string, rule: NumberRule): Amount | undefined {
  const found = pattern.exec(text);
  if (found === null) return undefined;
  const [, sign = '', top, bottom, whole, addTop, addBottom, addVulgar, loneVulgar, rest = ''] =
    found;
  const size =
    (top === undefined ? 0 : divide(top, bottom)) +
    (whole === undefined ? 0 : (readNumber(whole, rule) ?? Number.NaN)) +
    (addTop === undefined ? 0 : divide(addTop, addBottom)) +
    (vulgarFractions[addVulgar ?? loneVulgar ?? ''] ?? 0);
  if (!Number.isFinite(size)) return undefined;
  return {
    // Nothing has no sign: −0 would be told apart from 0 later on.
    value: sign === '-' && size > 0 ? -size : size,
    sign: sign === '+' || sign === '-' ? sign : '',
    fraction: (top ?? addTop ?? addVulgar ?? loneVulgar) !== undefined,
    rest: rest.trim(),
  };
}

/** No finite number where there is none. */
function divide(top: string, bottom: string | undefined): number {
  return Number(top) / (readNumber(bottom ?? '', { decimal: '.', small: true }) ?? Number.NaN);
}
