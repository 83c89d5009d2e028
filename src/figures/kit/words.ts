import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { WritingSettings } from '../../../functions/quantities/settings.ts';
import { fromBase } from '../../../functions/quantities/unit.ts';
import { workbookUnit } from '../../../functions/quantities/workbookUnit.ts';
import { writeQuantity } from '../../../functions/quantities/write.ts';
import { writeNumber } from '../../../functions/quantities/writing/number.ts';
import type { WritingFormat } from '../../../functions/quantities/writing/written.ts';
import { element, type Drawn } from './element.ts';
import { words } from '../../words/words.ts';

/** A value in the units of the book, thirds as figures that every typeface has. */
export function said(
  quantity: QuantityName,
  value: number,
  writing: WritingSettings,
  format: WritingFormat = {},
): string {
  return spelled(writeQuantity(quantity, value, writing, format).text);
}

/** The number alone, for scales that say their unit once. */
export function saidNumber(
  quantity: QuantityName,
  value: number,
  writing: WritingSettings,
  format: WritingFormat = {},
): string {
  return spelled(writeQuantity(quantity, value, writing, format).number);
}

/** A number for a scale, which is read by eye: two digits, more only before the decimal sign. */
export function roughly(quantity: QuantityName, value: number, writing: WritingSettings): string {
  const unit = workbookUnit(quantity, writing);
  const shown = unit ? fromBase(unit, value) : value;
  const digits = Math.max(2, Math.min(4, Math.floor(Math.log10(Math.max(1, Math.abs(shown)))) + 1));
  return writeNumber(Number(shown.toPrecision(digits)), writing);
}

/** Whole stops on a scale, with their sign. */
export const signedWhole = (value: number): string =>
  value === 0 ? '0' : `${value < 0 ? '−' : '+'}${Math.abs(value)}`;

const spelled = (text: string): string =>
  text.replace(/[½⅓⅔¼¾]/g, (sign) => sign.normalize('NFKD').replace('⁄', '/'));

/** A lone fraction such as the 2/3 of `1 2/3`; not f/2.8. */
const fraction = /(?<![\d/.])([1-9]\/(?:[2-9]|1[0-9]))(?![\d/.])/;

export interface WordsLook {
  readonly fill: string;
  readonly size: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly weight?: number;
  /** A line of the ground's colour around the letters, where they stand on lines. */
  readonly halo?: string;
}

/** One line of text at a baseline. Fractions are marked, for typefaces that can set them. */
export function lettering(x: number, y: number, text: string, look: WordsLook): Drawn {
  const { fill, size, anchor = 'start', weight, halo } = look;
  const pieces = text.split(fraction);
  return element(
    'text',
    {
      x,
      y,
      fill,
      'font-size': size,
      'text-anchor': anchor === 'start' ? undefined : anchor,
      'font-weight': weight,
      ...(halo !== undefined && {
        stroke: halo,
        'stroke-width': size / 4,
        'stroke-linejoin': 'round',
        'paint-order': 'stroke',
      }),
    },
    ...pieces.map((piece, index) =>
      index % 2 === 1 ? element('tspan', { class: 'fraction' }, piece) : piece,
    ),
  );
}

const narrow = /[ .,:;!|'()ijltfr1\-/]/;
const broad = /[mwMWÄÖÜ@%—]/;

/** About how wide a line of text is: close enough to keep lines from running into each other. */
export function widthOf(text: string, size: number): number {
  let width = 0;
  for (const sign of text) width += narrow.test(sign) ? 0.34 : broad.test(sign) ? 0.86 : 0.54;
  return width * size;
}

/** The text cut to a width, with what was cut said by dots. */
export function shortened(text: string, width: number, size: number): string {
  if (widthOf(text, size) <= width) return text;
  const signs = [...text];
  while (signs.length > 1 && widthOf(`${signs.join('')}…`, size) > width) signs.pop();
  return `${signs.join('').trimEnd()}…`;
}

/** The text in lines no wider than this, broken between words. */
export function wrapped(text: string, width: number, size: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const longer = `${lines.at(-1) ?? ''} ${word}`.trim();
    if (lines.length > 0 && widthOf(longer, size) <= width) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

/** "one, two and three". */
export function listed(parts: readonly string[]): string {
  return words.figures.listed(parts);
}
