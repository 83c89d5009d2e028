import { lightQuantities, type QuantityName } from '../../functions/quantities/names.ts';
import { units } from '../../functions/quantities/units.ts';
import type { KnownKind } from '../engine/index.ts';
import { words } from '../words/words.ts';

/** Compounds that have words of their own. */
const named: Readonly<Record<string, string>> = {
  any: words.check.plainNumber,
  '~pi1': words.check.plainNumber,
  '~footcandles1': words.check.numberOfFootcandles,
  '~footlamberts1': words.check.numberOfFootlamberts,
  '~time-1': words.check.numberPerSecond,
};

/** "an illuminance", "an amount in cd·m⁻¹". */
export function oneOf(kind: KnownKind): string {
  return named[kind] ?? (isQuantity(kind) ? units[kind].one : words.check.amountIn(unitsOf(kind)));
}

/** "a distance, an angle or a time"; all four kinds of light are "a level of light". */
export function anyOf(wanted: readonly QuantityName[]): string {
  const isLevel = lightQuantities.every((light) => wanted.includes(light));
  if (isLevel) return words.check.levelOfLight;
  const ones = wanted.map((quantity) => units[quantity].one);
  return words.check.either(ones);
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
