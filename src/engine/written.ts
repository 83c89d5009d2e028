import { defaultWriting, readAny } from '../../functions/quantities/index.ts';
import type { BinaryOperator, Node } from '../formula/types.ts';
import type { Kind } from './kinds.ts';

/** What a text written in the formula measures: `"250 lx"`. */
export function textKind(node: Node): Kind {
  if (node.kind !== 'text') return undefined;
  const reading = readAny(node.value, defaultWriting);
  return reading.ok ? reading.quantity : undefined;
}

/** The number that a part of a formula is, where it is written in the formula itself. */
export function writtenNumber(node: Node): number | undefined {
  if (node.kind === 'number') return node.value;
  if (node.kind === 'percent') return scaled(writtenNumber(node.argument), 0.01);
  if (node.kind === 'sign')
    return scaled(writtenNumber(node.argument), node.operator === '-' ? -1 : 1);
  if (node.kind !== 'binary') return undefined;
  const [left, right] = [writtenNumber(node.left), writtenNumber(node.right)];
  if (left === undefined || right === undefined) return undefined;
  return arithmetic[node.operator]?.(left, right);
}

const scaled = (value: number | undefined, by: number) =>
  value === undefined ? undefined : value * by;

const arithmetic: Partial<Record<BinaryOperator, (left: number, right: number) => number>> = {
  '+': (left, right) => left + right,
  '-': (left, right) => left - right,
  '*': (left, right) => left * right,
  '/': (left, right) => left / right,
  '^': (left, right) => left ** right,
};
