import { Decimal } from 'decimal.js';
import { usual } from '../../functions/usual.ts';
import type { AnyDefinition } from '../../functions/define.ts';
import { expand } from '../../src/formula/expand.ts';
import { readFormula } from '../../src/formula/read.ts';
import type { BinaryOperator, Node } from '../../src/formula/types.ts';

/** Fifty digits: far more than a number in a sheet has. */
export const Exact = Decimal.clone({ precision: 50, defaults: true });
export type Exact = Decimal;

type Worked = Decimal | boolean | readonly Decimal[];

/** Works the plain formula of a function out with fifty digits; undefined where it gives no value. */
export function workOutExactly(
  definition: AnyDefinition,
  handed: readonly unknown[],
): Decimal | boolean | undefined {
  const names = handed.map((value, index) => (value === undefined ? undefined : nameOf(index)));
  const plain = expand(definition, names, usual);
  if (!plain.ok) throw new Error(plain.reason);
  const read = readFormula(`=${plain.text}`, Infinity);
  if ('reason' in read) throw new Error(`${plain.text}: ${read.reason}`);
  const values = read.references.map((reference) => {
    const index = reference.kind === 'name' ? Number(reference.name.slice(nameOf('').length)) : NaN;
    return exactly(handed[index]);
  });
  const result = work(read.shape.tree, values);
  if (typeof result === 'boolean') return result;
  const number = single(result);
  return number.isFinite() ? number : undefined;
}

const nameOf = (index: number | '') => `Argument_${String(index)}`;

function exactly(value: unknown): Worked {
  if (Array.isArray(value)) return value.map((one) => new Exact(one as number));
  return typeof value === 'boolean' ? value : new Exact(value as number);
}

function work(node: Node, values: readonly Worked[]): Worked {
  if (node.kind === 'number') return new Exact(String(node.value));
  if (node.kind === 'reference') return values[node.slot] ?? new Exact(NaN);
  if (node.kind === 'sign') {
    const argument = single(work(node.argument, values));
    return node.operator === '-' ? argument.neg() : argument;
  }
  if (node.kind === 'binary') {
    const [left, right] = [work(node.left, values), work(node.right, values)];
    return operators[node.operator](single(left), single(right));
  }
  if (node.kind === 'call') {
    const run = functions[node.name];
    if (!run) throw new Error(`${node.name} is not worked out here.`);
    return run(node.arguments.map((argument) => (argument ? work(argument, values) : [])));
  }
  throw new Error(`A ${node.kind} is not worked out here.`);
}

function single(value: Worked | undefined): Decimal {
  if (value instanceof Decimal) return value;
  return new Exact(typeof value === 'boolean' ? Number(value) : NaN);
}

type Operator = (left: Decimal, right: Decimal) => Worked;

const unused: Operator = () => new Exact(NaN);

const operators: Readonly<Record<BinaryOperator, Operator>> = {
  '+': (a, b) => a.plus(b),
  '-': (a, b) => a.minus(b),
  '*': (a, b) => a.times(b),
  '/': (a, b) => a.div(b),
  '^': (a, b) => a.pow(b),
  '=': (a, b) => a.eq(b),
  '<>': (a, b) => !a.eq(b),
  '<': (a, b) => a.lt(b),
  '>': (a, b) => a.gt(b),
  '<=': (a, b) => a.lte(b),
  '>=': (a, b) => a.gte(b),
  '&': unused,
};

export const pi = Exact.acos(-1);

const of = (run: (value: Decimal) => Decimal) => (args: readonly Worked[]) => run(single(args[0]));
const all = (args: readonly Worked[]): Decimal[] => args.flat().map((one) => single(one));
const over = (run: (values: Decimal[]) => Decimal) => (args: readonly Worked[]) => run(all(args));
const sum = (values: readonly Decimal[]) =>
  values.reduce((total, one) => total.plus(one), new Exact(0));

const functions: Readonly<Record<string, (args: readonly Worked[]) => Worked>> = {
  ABS: of((x) => x.abs()),
  ATAN: of((x) => x.atan()),
  COS: of((x) => x.cos()),
  COUNT: over((values) => new Exact(values.length)),
  DEGREES: of((x) => x.times(180).div(pi)),
  IF: ([test, yes = false, no = false]) => (test === true ? yes : no),
  INT: of((x) => x.floor()),
  EXP: of((x) => x.exp()),
  LN: of((x) => x.ln()),
  LOG10: of((x) => x.log(10)),
  MAX: over((values) => Exact.max(...values)),
  MIN: over((values) => Exact.min(...values)),
  NA: () => new Exact(NaN),
  PI: () => pi,
  RADIANS: of((x) => x.times(pi).div(180)),
  ROUND: of((x) => x.toDecimalPlaces(0, Decimal.ROUND_HALF_UP)),
  ROUNDUP: of((x) => x.toDecimalPlaces(0, Decimal.ROUND_UP)),
  SIN: of((x) => x.sin()),
  SQRT: of((x) => x.sqrt()),
  SUM: over(sum),
  SUMSQ: over((values) => sum(values.map((one) => one.times(one)))),
  TAN: of((x) => x.tan()),
};
