import { lightQuantities, type QuantityName } from '../../functions/quantities/names.ts';
import { alike, combined, dimensionsOf, kindWith, pi, plainNumbers } from './dimensions.ts';
import { isCompound, type Compound, type Kind, type KnownKind } from './kinds.ts';

/** One side of an operator. */
export interface Side {
  readonly kind: Kind;
  /** Where the side is a number written in the formula. */
  readonly written: number | undefined;
}

/** What an operation comes to, or that its sides do not go together. */
export type Outcome = { readonly kind: Kind } | { readonly clash: true };

export const clash: Outcome = { clash: true };

const isLight: ReadonlySet<Kind> = new Set<Kind>(lightQuantities);

/** Numbers that fit whatever stands beside them. */
export function isPlain(kind: Kind): boolean {
  return kind === 'any' || kind === 'number' || kind === pi;
}

/** Numbers that say how many times as much. */
export const sharesOfSomething: ReadonlySet<Kind> = new Set<Kind>(['share', 'factor', 'ratio']);

function isPure(kind: KnownKind): boolean {
  return Object.keys(dimensionsOf(kind)).length === 0;
}

/** Bare numbers by which people turn lux into footcandles and back, to the digits they remember. */
const perPlain: readonly (readonly [QuantityName, Compound, number])[] = [
  ['illuminance', '~footcandles1', 10.7639],
  ['luminance', '~footlamberts1', 3.42626],
];
const remembered = 0.005;

/** What a quantity times a number that is written in the formula comes to. */
function timesNumber(kind: KnownKind, factor: number): KnownKind {
  for (const [quantity, plain, size] of perPlain) {
    if (kind === quantity && Math.abs(factor * size - 1) < remembered) return plain;
    if (kind === plain && Math.abs(factor / size - 1) < remembered) return quantity;
  }
  return kind;
}

export function times({ kind: left, written: a }: Side, { kind: right, written: b }: Side): Kind {
  if (left === undefined || right === undefined) return undefined;
  if (b !== undefined) return timesNumber(left, b);
  if (a !== undefined) return timesNumber(right, a);
  if (isPure(left) && isPure(right)) return pureProduct(left, right);
  if (isPure(right)) return left;
  if (isPure(left)) return right;
  if (left === right && isOwnKind(left)) return undefined;
  const both = new Set<Kind>([left, right]);
  // Volts times amperes are volt-amperes until a power factor says how many watts.
  if (both.has('voltage') && both.has('current')) return 'apparentPower';
  return kindWith(combined(dimensionsOf(left), dimensionsOf(right), 1));
}

/** Counts of doublings and the like: a square of them is nothing. */
function isOwnKind(kind: KnownKind): boolean {
  return kind in dimensionsOf(kind) && kind !== 'length' && kind !== 'time';
}

function pureProduct(left: KnownKind, right: KnownKind): Kind {
  if (isPlain(left)) return right === 'any' ? left : right;
  if (isPlain(right) || (left === right && left !== 'angle')) return left;
  return 'number';
}

export function over({ kind: left, written: a }: Side, { kind: right, written: b }: Side): Kind {
  if (left === undefined || right === undefined) return undefined;
  if (b !== undefined) return timesNumber(left, 1 / b);
  if (left === 'any' && !isPure(right)) return inverse(right, a);
  if (isPure(right)) {
    if (!isPure(left) || isPlain(right)) return left;
    return left === right && left === 'ratio' ? 'ratio' : 'number';
  }
  if (left === right) return isLight.has(left) ? 'ratio' : 'number';
  return kindWith(combined(dimensionsOf(left), dimensionsOf(right), -1));
}

/** A million over kelvin is mired, and back: exactly, the factor is in the definition. */
const million = 1e6;

function inverse(right: KnownKind, written: number | undefined): Kind {
  const isMillion = written === million;
  if (right === 'mired' || right === 'colourTemperature') {
    if (!isMillion) return undefined;
    return right === 'mired' ? 'colourTemperature' : 'mired';
  }
  if (right === 'frameRate' || right === 'frequency') return 'time';
  return kindWith(combined({}, dimensionsOf(right), -1));
}

/** A base to a power: `2 ^ stops` is a factor, and who raises 10 to lux has mistaken a cell. */
export function raised({ kind: base }: Side, { kind: power, written: exponent }: Side): Outcome {
  if (base === undefined || power === undefined) return { kind: undefined };
  if (isPlain(base)) return plainRaised(base, power);
  if (!isPlain(power)) return sharesOfSomething.has(power) ? { kind: undefined } : clash;
  if (exponent === undefined) return { kind: undefined };
  if (exponent === 1) return { kind: base };
  const kind = isPure(base) ? 'number' : kindWith(combined({}, dimensionsOf(base), exponent));
  return { kind };
}

function plainRaised(base: KnownKind, power: KnownKind): Outcome {
  if (power === 'stops' || power === 'ev')
    return { kind: power === 'stops' ? 'factor' : undefined };
  if (power === 'density') return { kind: 'share' };
  if (isPlain(power)) return { kind: base };
  return isPure(power) || isCompound(power) ? { kind: undefined } : clash;
}

/** Pairs that make sense together under + and − although they are not of one kind. */
const sums: Readonly<Record<string, Kind>> = {
  'ev + stops': 'ev',
  'stops + ev': 'ev',
  'ev - stops': 'ev',
  'ev - ev': 'stops',
  // In days, where a length of time is kept in hours.
  'dateTime - dateTime': 'number',
  'dateTime + duration': 'dateTime',
  'dateTime - duration': 'dateTime',
  'duration + dateTime': 'dateTime',
  'truth + truth': 'number',
  'truth - truth': 'number',
};

/** Pairs of one kind that do not add up to more of it. */
const senseless: ReadonlySet<string> = new Set([
  'fNumber + fNumber',
  'fNumber - fNumber',
  'colourTemperature + colourTemperature',
  'ev + ev',
  'text + text',
  'text - text',
  'verdict + verdict',
  'verdict - verdict',
]);

/** What two kinds come to under + and −, or that they do not go together. */
export function added(left: Kind, right: Kind, operator: '+' | '-'): Outcome {
  if (left === undefined || right === undefined) return { kind: undefined };
  const pair = `${left} ${operator} ${right}`;
  if (pair in sums) return { kind: sums[pair] };
  if (senseless.has(pair)) return clash;
  return together(left, right);
}

/** One kind for two that stand beside each other, in a sum, a comparison or the branches of an IF. */
export function together(left: KnownKind, right: KnownKind): Outcome {
  if (left === right) return { kind: left };
  if (left === 'any' || left === pi) return { kind: right };
  if (right === 'any' || right === pi) return { kind: left };
  if (isWords(left) || isWords(right))
    return isWords(left) && isWords(right) ? { kind: 'text' } : clash;
  if (left === 'number') return { kind: right };
  if (right === 'number') return { kind: left };
  if (sharesOfSomething.has(left) && sharesOfSomething.has(right)) return { kind: 'number' };
  if ((isCompound(left) || isCompound(right)) && !hasPlain(left, right) && alike(left, right))
    return { kind: isCompound(left) ? right : left };
  return clash;
}

const hasPlain = (...kinds: readonly KnownKind[]) => kinds.some((kind) => kind in plainNumbers);

export function isWords(kind: Kind): boolean {
  return kind === 'text' || kind === 'verdict';
}
