import { lightQuantities, type QuantityName } from '../../functions/quantities/names.ts';
import { units } from '../../functions/quantities/units.ts';
import type { KnownKind } from '../engine/index.ts';

/** Compounds that have words of their own. */
const named: Readonly<Record<string, string>> = {
  any: 'a plain number',
  '~pi1': 'a plain number',
  '~footcandles1': 'a plain number of footcandles',
  '~footlamberts1': 'a plain number of footlamberts',
  '~time-1': 'a number per second',
};

/** "an illuminance", "an amount in cd·m⁻¹". */
export function oneOf(kind: KnownKind): string {
  return named[kind] ?? (isQuantity(kind) ? units[kind].one : `an amount in ${unitsOf(kind)}`);
}

/** "a distance, an angle or a time"; all four kinds of light are "a level of light". */
export function anyOf(wanted: readonly QuantityName[]): string {
  const isLevel = lightQuantities.every((light) => wanted.includes(light));
  if (isLevel) return 'a level of light';
  const ones = wanted.map((quantity) => units[quantity].one);
  return [ones.slice(0, -1).join(', '), ones.at(-1) ?? ''].filter(Boolean).join(' or ');
}

export function isQuantity(kind: KnownKind): kind is QuantityName {
  return Object.hasOwn(units, kind);
}

/** `~intensity1length-1` as `cd·m⁻¹`. */
function unitsOf(compound: string): string {
  return [...compound.matchAll(/([A-Za-z]+)(-?\d+)/g)]
    .map(([, name = '', power = '']) => symbolOf(name) + (power === '1' ? '' : raised(power)))
    .join('·');
}

function symbolOf(name: string): string {
  const known = isQuantity(name as KnownKind) ? units[name as QuantityName] : undefined;
  return known?.base || known?.words || name;
}

const digits = '⁰¹²³⁴⁵⁶⁷⁸⁹';

function raised(power: string): string {
  return power.replace(/./g, (sign) => (sign === '-' ? '⁻' : (digits[Number(sign)] ?? '')));
}
