import type { BinaryOperator } from '../formula/types.ts';
import {
  added,
  clash,
  isWords,
  over,
  raised,
  times,
  together,
  type Outcome,
  type Side,
} from './algebra.ts';
import { isCompound, type Kind } from './kinds.ts';

/** What two sides come to under an operator, or that they do not go together. */
export function operation(operator: BinaryOperator, left: Side, right: Side): Outcome {
  return operations[operator](left, right, operator);
}

type Operation = (left: Side, right: Side, operator: BinaryOperator) => Outcome;

const comparison: Operation = ({ kind: left }, { kind: right }) =>
  left !== undefined && right !== undefined && 'clash' in together(left, right)
    ? clash
    : { kind: 'truth' };

/** Words cannot be calculated with. */
const ofNumbers =
  (work: Operation): Operation =>
  (left, right, operator) =>
    isWords(left.kind) || isWords(right.kind) ? clash : work(left, right, operator);

const ofLight =
  (work: (left: Side, right: Side) => Kind): Operation =>
  (left, right, operator) =>
    inDoublings(left.kind, right.kind, operator) || isMoneySquared(left, right, operator)
      ? clash
      : { kind: work(left, right) };

/** A price times a price is nothing that anyone pays: one of them is a mistaken cell. */
const isMoneySquared = (left: Side, right: Side, operator: BinaryOperator): boolean =>
  operator === '*' && left.kind === 'money' && right.kind === 'money';

const operations: Readonly<Record<BinaryOperator, Operation>> = {
  '=': comparison,
  '<>': comparison,
  '<': comparison,
  '>': comparison,
  '<=': comparison,
  '>=': comparison,
  '&': () => ({ kind: 'text' }),
  '+': ofNumbers(({ kind: left }, { kind: right }) => added(left, right, '+')),
  '-': ofNumbers(({ kind: left }, { kind: right }) => added(left, right, '-')),
  '*': ofNumbers(ofLight(times)),
  '/': ofNumbers(ofLight(over)),
  '^': ofNumbers(raised),
};

/** What is multiplied where light is. */
const linear: ReadonlySet<Kind> = new Set<Kind>([
  'illuminance',
  'luminance',
  'intensity',
  'flux',
  'ratio',
  'factor',
  'fNumber',
  'iso',
  'time',
]);
const doublings: ReadonlySet<Kind> = new Set<Kind>(['stops', 'ev']);
const ofLightItself: ReadonlySet<Kind> = new Set<Kind>(['ratio', 'factor']);

/**
 * Stops and exposure values count doublings: they are added where light is multiplied. An f-number
 * goes with the root of the light and not with the light.
 */
function inDoublings(left: Kind, right: Kind, operator: BinaryOperator): boolean {
  if (isCompound(left) || isCompound(right)) return false;
  if (left === 'fNumber' && ofLightItself.has(right)) return true;
  if (right === 'fNumber' && ofLightItself.has(left)) return operator === '*';
  return (doublings.has(left) && linear.has(right)) || (doublings.has(right) && linear.has(left));
}
