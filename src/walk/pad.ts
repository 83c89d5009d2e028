import { units } from '../../functions/quantities/units.ts';
import { workbookUnit } from '../../functions/quantities/index.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { WritingSettings } from '../../functions/quantities/settings.ts';
import { words } from '../words/words.ts';

/** A key under the thumb. What it does to the text is `press`. */
export type PadKey =
  | {
      readonly does: 'mark' | 'part' | 'type' | 'unit';
      readonly text: string;
      readonly says: string;
    }
  | { readonly does: 'sign' | 'erase'; readonly says: string };

/** The keys for one quantity, in rows. */
export interface Pad {
  readonly quantity: QuantityName | undefined;
  /** Keys of an f-number: whole stops, then what lies between. */
  readonly wheel: boolean;
  readonly rows: readonly (readonly PadKey[])[];
  /** A row with fewer keys leaves room, but for the zero, which takes it. */
  readonly columns: number;
  /** The unit that a bare number gets; empty for none. */
  readonly unit: string;
}

/** Whole stops that meters show; exactly, powers of the root of two. */
const marks = ['0.7', '1', '1.4', '2', '2.8', '4', '5.6', '8', '11', '16', '22', '32'];

const erase: PadKey = { does: 'erase', says: words.walk.erase };
const sign: PadKey = { does: 'sign', says: words.walk.plusOrMinus };
const type = (text: string, says = text): PadKey => ({ does: 'type', text, says });
const part = (text: string, says = text): PadKey => ({ does: 'part', text, says });

const even = part('', words.walk.even);
const parts: Readonly<Record<Exclude<WritingSettings['fNumbers'], 'decimals'>, PadKey[]>> = {
  thirds: [even, part(' 1/3', '+ 1/3'), part(' 2/3', '+ 2/3')],
  halves: [even, part(' 1/2', '+ 1/2')],
  tenths: [even, ...[1, 2, 3, 4, 5, 6, 7, 8, 9].map((tenth) => part(`+0.${tenth}`, `.${tenth}`))],
};

/** Quantities whose numbers may be below zero. */
const signed: ReadonlySet<QuantityName | undefined> = new Set<QuantityName>([
  'ev',
  'stops',
  'duv',
  'mired',
  'temperature',
  'greenCorrection',
]);

/** More units than this would crowd the digits. */
const unitsBeside = 3;

export function padFor(quantity: QuantityName | undefined, writing: WritingSettings): Pad {
  if (quantity === 'fNumber' && writing.fNumbers !== 'decimals') return wheel(writing);
  const offered = unitsOf(quantity, writing);
  const beside: PadKey[] = [
    ...(signed.has(quantity) ? [sign] : []),
    ...(quantity === 'time' ? [type('1/')] : []),
    ...(offered.length > 1 ? offered : []).map((unit): PadKey => ({
      does: 'unit',
      text: unit,
      says: unit,
    })),
  ];
  const digits = [
    ['1', '2', '3'],
    ['4', '5', '6'],
    ['7', '8', '9'],
  ].map((row, at) => [...row.map((digit) => type(digit)), ...beside.slice(at, at + 1)]);
  return {
    quantity,
    wheel: false,
    columns: beside.length > 0 ? 4 : 3,
    rows: [...digits, [type(writing.decimal, words.walk.decimalSign), type('0'), erase]],
    unit: offered[0] ?? '',
  };
}

function wheel(writing: WritingSettings): Pad {
  const { fNumbers, decimal } = writing;
  const between = fNumbers === 'decimals' ? [] : parts[fNumbers];
  const local = (text: string) => text.replace('.', decimal);
  const keys = [
    ...between.map((key) =>
      'text' in key ? { ...key, text: local(key.text), says: local(key.says) } : key,
    ),
    erase,
  ];
  const rowsOfMarks = [0, 4, 8].map((from) =>
    marks
      .slice(from, from + 4)
      .map((mark): PadKey => ({ does: 'mark', text: `f/${local(mark)}`, says: local(mark) })),
  );
  return {
    quantity: 'fNumber',
    wheel: true,
    columns: 4,
    rows: [...rowsOfMarks, ...(keys.length > 6 ? [keys.slice(0, 6), keys.slice(6)] : [keys])],
    unit: '',
  };
}

/** The book’s own unit first. Shutter times and angles are typed as they are. */
function unitsOf(quantity: QuantityName | undefined, writing: WritingSettings): readonly string[] {
  if (quantity === undefined || quantity === 'fNumber' || quantity === 'iso') return [];
  const symbols = units[quantity].units.map(({ symbol }) => symbol);
  const own = workbookUnit(quantity, writing)?.symbol ?? units[quantity].base;
  const first = symbols.includes(own) ? [own] : [];
  return [...new Set([...first, ...symbols])].slice(0, unitsBeside);
}

const fNumber = /^(f\/[\d.,]+)(.*)$/;
const amount = /^([-+−]?[\d.,/ ]*)(.*)$/;

/** What stands before the first press is `kept`, what was typed there before. */
export function press(text: string, kept: string, key: PadKey): string {
  if (key.does === 'mark') return key.text;
  if (key.does === 'part') {
    const mark = fNumber.exec(text || kept)?.[1];
    return mark === undefined ? text : mark + key.text;
  }
  if (key.does === 'type') return typedAfter(text, key.text);
  if (key.does === 'unit') {
    const number = amount.exec(text || kept)?.[1]?.trim() ?? '';
    return number === '' ? text : `${number} ${key.text}`;
  }
  if (key.does === 'sign') return turned(text || kept);
  return erased(text || kept);
}

/** Digits go on before a unit that stands already. */
function typedAfter(text: string, more: string): string {
  const [, number = '', unit = ''] = amount.exec(text) ?? [];
  if (unit === '' || fNumber.test(text)) return text + more;
  return `${number.trim()}${more} ${unit}`;
}

const turned = (text: string): string =>
  /^[-−]/.test(text) ? text.slice(1) : `-${text.replace(/^\+/, '')}`;

function erased(text: string): string {
  const [, mark = '', between = ''] = fNumber.exec(text) ?? [];
  if (mark !== '') return between === '' ? '' : mark;
  const [, number = '', unit = ''] = amount.exec(text) ?? [];
  return unit === '' ? text.slice(0, -1).trimEnd() : number.trim();
}

/** The text as the book reads it: `5.6 1/3` in f-numbers means f/5.6 1/3, `85` in lux 85 lx. */
export function whole(text: string, { quantity, unit }: Pad): string {
  const trimmed = text.trim();
  // A unit that was written says itself what is meant.
  if (!/^[-+−]?[\d.,]/.test(trimmed) || /[a-z%°µ×]/i.test(trimmed)) return trimmed;
  if (quantity === 'fNumber') return `f/${trimmed}`;
  return unit === '' ? trimmed : `${trimmed} ${unit}`;
}

/** Which keys the text is made of. */
export function isLit(text: string, key: PadKey): boolean {
  const [, mark = '', between = ''] = fNumber.exec(text) ?? [];
  if (key.does === 'mark') return mark === key.text;
  if (key.does === 'part') return mark !== '' && between.trim() === key.text.trim();
  return key.does === 'unit' && amount.exec(text)?.[2]?.trim() === key.text;
}
