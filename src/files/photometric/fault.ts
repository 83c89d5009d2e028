import { words } from '../../words/words.ts';

/** Why a photometric file cannot be read, and where: lines count from 1. */
export class Fault extends Error {
  readonly line: number;

  constructor(line: number, reason: string) {
    super(reason);
    this.line = line;
  }
}

/** More than any goniometer measures; a file that claims more is broken or means harm. */
const mostAngles = 5_000;
const mostValues = 500_000;

const plain = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?$/;

/** A number as both file forms write it, or NaN. */
export function numberFrom(word: string): number {
  return plain.test(word) ? Number(word) : Number.NaN;
}

/** A number with the line that it stands on. */
export interface Stated {
  readonly value: number;
  readonly line: number;
}

export function counted({ value, line }: Stated, what: string, least: number): number {
  if (!Number.isInteger(value) || value < least || value > mostAngles)
    throw new Fault(line, words.photometric.wholeNumber(what, least, mostAngles, value));
  return value;
}

export function boundedTable(line: number, planes: number, angles: number): void {
  if (planes * angles > mostValues)
    throw new Fault(line, words.photometric.tooMany(planes, angles));
}

/** Angles must rise from one to the next and stay within their bounds. */
export function ascending(
  angles: readonly Stated[],
  what: string,
  [low, high]: readonly [number, number],
): readonly number[] {
  angles.forEach(({ value, line }, index) => {
    const before = angles[index - 1]?.value ?? -Infinity;
    if (value < low || value > high)
      throw new Fault(line, words.photometric.mustLie(what, low, high, value));
    if (value <= before) throw new Fault(line, words.photometric.mustRise(what, value, before));
  });
  return angles.map(({ value }) => value);
}

export function moreThanZero({ value, line }: Stated, what: string): number {
  if (!(value > 0)) throw new Fault(line, words.photometric.aboveZero(what, value));
  return value;
}

/** Intensities as they are meant: none is less than nothing or beyond counting. */
export function intensity({ value, line }: Stated, factor: number): number {
  if (value < 0) throw new Fault(line, words.photometric.intensityBelow(value));
  const candela = value * factor;
  if (!Number.isFinite(candela)) throw new Fault(line, words.photometric.intensityAbove(value));
  return candela;
}
