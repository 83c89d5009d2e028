import type { QuantityName } from '../../functions/quantities/names.ts';
import type { Node } from '../formula/types.ts';
import { plainNumbers } from './dimensions.ts';
import { isCompound, type Kind } from './kinds.ts';

/**
 * Quantities that a bare number in the formula can turn into each other: lumens per watt, volts of
 * the mains, an hourly rate, the 0.301 of a stop. Such a formula is not judged by its dimensions.
 */
const byConstant: readonly (readonly QuantityName[])[] = [
  ['power', 'apparentPower', 'current', 'voltage', 'energy', 'charge', 'duration', 'flux'],
  ['density', 'stops', 'greenCorrection'],
  ['duv', 'greenCorrection'],
  ['illuminance', 'luminance', 'intensity', 'flux'],
  ['angle', 'time', 'frameRate'],
  ['length', 'area', 'weight'],
  ['time', 'duration'],
  ['mired', 'colourTemperature'],
];
const withAnything: ReadonlySet<Kind> = new Set<Kind>([
  'money',
  'number',
  'share',
  'factor',
  'ratio',
]);

/** Whether a number written in the formula, by which it multiplies or divides, can account for the result. */
export function mayBeByConstant(
  wanted: QuantityName,
  given: Kind,
  tree: Node,
  kindOf: (node: Node) => Kind,
): boolean {
  if (tree.kind === 'sign') return mayBeByConstant(wanted, given, tree.argument, kindOf);
  if (tree.kind === 'call' && tree.name.startsWith('ROUND')) {
    const [rounded] = tree.arguments;
    return rounded ? mayBeByConstant(wanted, given, rounded, kindOf) : false;
  }
  if (tree.kind !== 'binary' || (tree.operator !== '*' && tree.operator !== '/')) return false;
  const [left, right] = [kindOf(tree.left), kindOf(tree.right)];
  if (tree.operator === '/' && left === 'any') return !byMillion.has(given);
  const directCurrent = left !== right && volts.has(left) && volts.has(right);
  if (directCurrent && wanted === 'power') return true;
  const written = left === 'any' || right === 'any';
  const inside = (node: Node) => mayBeByConstant(wanted, given, node, kindOf);
  if (!written) return inside(tree.left) || inside(tree.right);
  if (isCompound(given)) return !(given in plainNumbers);
  if (withAnything.has(wanted) || withAnything.has(given)) return true;
  return byConstant.some((group) => {
    const isIn = (kind: Kind) => group.some((quantity) => quantity === kind);
    return isIn(wanted) && isIn(given);
  });
}

/** A million over one is the other, and nothing else. */
const byMillion: ReadonlySet<Kind> = new Set<Kind>(['mired', 'colourTemperature']);
const volts: ReadonlySet<Kind> = new Set<Kind>(['voltage', 'current']);
