import { quantityNames, type QuantityName } from '../../functions/quantities/names.ts';
import { isCompound, type Compound, type Kind, type KnownKind } from './kinds.ts';

/** Powers of what cannot be divided further; a name that is missing has power 0. */
export type Dimensions = Readonly<Record<string, number>>;

/**
 * Quantities made of others. Light is counted from the candela; a solid angle has no dimension, so
 * that lux and candela per square metre look alike here and their names keep them apart. A quantity
 * that is not listed, such as a number of stops, is a dimension of its own.
 */
const made: Readonly<Partial<Record<QuantityName, Dimensions>>> = {
  illuminance: { intensity: 1, length: -2 },
  luminance: { intensity: 1, length: -2 },
  flux: { intensity: 1 },
  area: { length: 2 },
  frameRate: { time: -1 },
  frequency: { time: -1 },
  apparentPower: { power: 1 },
  current: { power: 1, voltage: -1 },
  energy: { power: 1, duration: 1 },
  charge: { power: 1, duration: 1, voltage: -1 },
  mired: { colourTemperature: -1 },
  share: {},
  ratio: {},
  factor: {},
  number: {},
  angle: {},
  truth: {},
};

/** Where several quantities have the same dimensions, the one to show a result as. */
const preferred: Readonly<Record<string, QuantityName>> = {
  'intensity1length-2': 'illuminance',
  power1: 'power',
  'time-1': 'frequency',
};

/** Constants of exposure (lx·s, cd·s/m²) are written as bare numbers: what holds these is not judged. */
const photographic = ['fNumber', 'iso'];

/** π turns light that leaves a surface into light that falls on it; in all else it is a number. */
export const pi: Compound = '~pi1';

const keyOf = (dimensions: Dimensions): string =>
  Object.keys(dimensions)
    .toSorted()
    .map((name) => `${name}${String(dimensions[name])}`)
    .join('');

const sharing = new Map<string, QuantityName[]>();
for (const name of quantityNames) {
  const key = keyOf(dimensionsOf(name));
  sharing.set(key, [...(sharing.get(key) ?? []), name]);
}

export function dimensionsOf(kind: KnownKind): Dimensions {
  if (kind === 'any') return {};
  if (!isCompound(kind)) return made[kind] ?? { [kind]: 1 };
  return Object.fromEntries(
    [...kind.matchAll(/([A-Za-z]+)(-?\d+)/g)].map(([, name = '', power]) => [name, Number(power)]),
  );
}

/** What is measured by a product of powers: a quantity if only one fits, else the bare dimensions. */
export function kindWith(dimensions: Dimensions): Kind {
  const { pi: turned, ...others } = withoutZeros(dimensions);
  const names = Object.keys(others);
  if (names.length === 0) return turned === undefined ? 'number' : pi;
  if (turned !== undefined && names.includes('intensity')) return undefined;
  if (!names.every((name) => Number.isInteger(others[name]))) return undefined;
  const key = keyOf(others);
  const [only, ...more] = sharing.get(key) ?? [];
  if (only !== undefined && more.length === 0) return only;
  return names.some((name) => photographic.includes(name)) ? undefined : `~${key}`;
}

function withoutZeros(dimensions: Dimensions): Dimensions {
  return Object.fromEntries(Object.entries(dimensions).filter(([, power]) => power !== 0));
}

/** `left` times `right` to a power. */
export function combined(left: Dimensions, right: Dimensions, power: number): Dimensions {
  const product: Record<string, number> = { ...left };
  for (const [name, exponent] of Object.entries(right))
    product[name] = (product[name] ?? 0) + power * exponent;
  return product;
}

export function alike(one: KnownKind, other: KnownKind): boolean {
  return keyOf(dimensionsOf(one)) === keyOf(dimensionsOf(other));
}

/** The quantity that a result is shown as. */
export function shownAs(kind: Kind): QuantityName | undefined {
  if (kind === 'any' || kind === pi) return undefined;
  if (!isCompound(kind)) return kind;
  return kind in plainNumbers ? 'number' : preferred[kind.slice(1)];
}

/** Numbers that stand for light in units which cells do not keep. */
export const plainNumbers: Readonly<Record<Compound, 'illuminance' | 'luminance'>> = {
  '~footcandles1': 'illuminance',
  '~footlamberts1': 'luminance',
};
