import { abbreviate } from './abbreviate.ts';
import { termOf, type Term } from './term.ts';
import { words } from '../words/words.ts';

/** Mathematics as it stands on paper. */
export type Typeset =
  | { readonly kind: 'row'; readonly parts: readonly Typeset[] }
  | { readonly kind: 'word' | 'number' | 'sign' | 'function'; readonly text: string }
  | { readonly kind: 'fraction'; readonly over: Typeset; readonly under: Typeset }
  | { readonly kind: 'power'; readonly base: Typeset; readonly exponent: Typeset }
  | { readonly kind: 'logarithm'; readonly base: string }
  | { readonly kind: 'root'; readonly of: Typeset }
  | { readonly kind: 'fence'; readonly fence: Fence; readonly of: Typeset }
  | { readonly kind: 'cases'; readonly cases: readonly Case[] };

export type Fence = 'brackets' | 'size' | 'floor' | 'ceiling';
export interface Case {
  readonly is: Typeset;
  /** Left out: in all other cases. */
  readonly when?: Typeset;
}

/** An equation with what its letters stand for, each line by itself. */
export interface Equation {
  readonly is: Typeset;
  readonly where: readonly { readonly letter: string; readonly is: Typeset }[];
}

/** A plain formula as it would be printed; undefined where it has no such form. */
export function equationOf(formula: string): Equation | undefined {
  const term = termOf(formula);
  if (!term) return undefined;
  const short = abbreviate(term);
  return {
    is: typeset(short.term),
    where: short.where.map(({ letter, is }) => ({ letter, is: typeset(is) })),
  };
}

/** How firmly parts hold together: sums less than products, those less than powers. */
const strength = { comparison: 1, sum: 2, product: 3, power: 4, whole: 5 } as const;
type Strength = (typeof strength)[keyof typeof strength];
interface Printed {
  readonly is: Typeset;
  readonly holds: Strength;
}

const row = (...parts: readonly Typeset[]): Typeset => ({ kind: 'row', parts });
const sign = (text: string): Typeset => ({ kind: 'sign', text });
/** In front of what it turns round, and close to it. */
const minus: Typeset = { kind: 'number', text: '−' };
const word = (text: string): Typeset => ({ kind: 'word', text: text.replaceAll('_', ' ') });
const called = (text: string): Typeset => ({ kind: 'function', text });
const fenced = (fence: Fence, of: Typeset): Typeset => ({ kind: 'fence', fence, of });
const whole = (is: Typeset): Printed => ({ is, holds: strength.whole });

/** In an exponent a fraction lies flat. */
const typeset = (term: Term, flat = false): Typeset => print(term, flat).is;
const held = ({ is, holds }: Printed, least: Strength): Typeset =>
  holds < least ? fenced('brackets', is) : is;

function print(term: Term, flat: boolean): Printed {
  if (term.kind === 'number') return whole(number(term.value));
  if (term.kind === 'word') return whole(word(term.text));
  if (term.kind === 'call') return call(term.name, term.of, flat);
  const negative = negated(term);
  if (negative) {
    const of = held(print(negative, flat), strength.product);
    return { is: row(minus, of), holds: strength.sum };
  }
  return term.kind === 'minus' ? print(term.of, flat) : binary(term, flat);
}

/** A product that begins with a minus is a minus before the product. */
function negated(term: Term): Term | undefined {
  if (term.kind === 'minus') return term.of;
  if (term.kind !== 'binary' || !/[*/]/.test(term.operator)) return undefined;
  const left = negated(term.left);
  return left && { ...term, left };
}

type Binary = Extract<Term, { kind: 'binary' }>;

function binary(term: Binary, flat: boolean): Printed {
  const { operator, left, right } = term;
  const part = (one: Term, least: Strength) => held(print(one, flat), least);
  if (operator === '/') return quotient(term, flat);
  if (operator === '^') {
    const base = part(left, strength.whole);
    return { is: { kind: 'power', base, exponent: typeset(right, true) }, holds: strength.power };
  }
  if (operator === '*') {
    const is = row(part(left, strength.product), sign('·'), part(right, strength.product));
    return { is, holds: strength.product };
  }
  if (operator === '+' || operator === '-') {
    const other = operator === '+' ? negated(right) : undefined;
    const less = operator === '-' || other !== undefined;
    const added = part(other ?? right, less ? strength.product : strength.sum);
    const is = row(part(left, strength.sum), sign(less ? '−' : '+'), added);
    return { is, holds: strength.sum };
  }
  const is = row(
    part(left, strength.sum),
    sign(comparisons[operator] ?? operator),
    part(right, strength.sum),
  );
  return { is, holds: strength.comparison };
}

const comparisons: Readonly<Record<string, string>> = { '<=': '≤', '>=': '≥', '<>': '≠' };

function quotient(term: Binary, flat: boolean): Printed {
  const { left, right } = term;
  const log = logarithm(term, flat);
  if (log) return log;
  if (flat) {
    const is = row(
      held(print(left, flat), strength.product),
      sign('/'),
      held(print(right, flat), strength.power),
    );
    return { is, holds: strength.product };
  }
  // a / b / c is printed as one fraction, a over b · c.
  const above = left.kind === 'binary' && left.operator === '/' && !isBase(left.right);
  const over = above ? left.left : left;
  const below: Term = above ? { kind: 'binary', operator: '*', left: left.right, right } : right;
  return {
    is: { kind: 'fraction', over: typeset(over), under: typeset(below) },
    holds: strength.product,
  };
}

/** `LN(2)`, by which a logarithm is divided to count stops. */
const isBase = (term: Term): boolean =>
  term.kind === 'call' &&
  term.name === 'LN' &&
  term.of[0]?.kind === 'number' &&
  term.of[0].value === 2;

/** `2 * LN(x) / LN(2)` is twice the logarithm to base 2. */
function logarithm({ left, right }: Binary, flat: boolean): Printed | undefined {
  if (!isBase(right)) return undefined;
  const before = left.kind === 'binary' && left.operator === '*' ? left.left : undefined;
  const last = before && left.kind === 'binary' ? left.right : left;
  if (last.kind !== 'call' || last.name !== 'LN' || !last.of[0]) return undefined;
  const log = row({ kind: 'logarithm', base: '2' }, fenced('brackets', typeset(last.of[0], flat)));
  if (!before) return whole(log);
  const is = row(held(print(before, flat), strength.product), sign('·'), log);
  return { is, holds: strength.product };
}

const spelled: Readonly<Record<string, string>> = {
  LN: 'ln',
  SIN: 'sin',
  COS: 'cos',
  TAN: 'tan',
  ATAN: 'arctan',
};

/** How functions of spreadsheets are printed; those left out are written as they are called. */
const printed: Readonly<Record<string, (of: Typeset) => Typeset>> = {
  PI: () => sign('π'),
  NA: () => word(words.reference.noAnswer),
  SQRT: (of) => ({ kind: 'root', of }),
  ABS: (of) => fenced('size', of),
  INT: (of) => fenced('floor', of),
  ROUNDUP: (of) => fenced('ceiling', of),
  ROUND: (of) => row(called(words.reference.round), fenced('brackets', of)),
  LOG10: (of) => row({ kind: 'logarithm', base: '10' }, fenced('brackets', of)),
  SUM: (of) => row(sign('Σ'), of),
  SUMSQ: (of) => row(sign('Σ'), { kind: 'power', base: of, exponent: number(2) }),
  COUNT: (of) => row(called(words.reference.numberOf), of),
};

function call(name: string, of: readonly Term[], flat: boolean): Printed {
  if (name === 'IF') return { is: { kind: 'cases', cases: casesOf(of) }, holds: strength.sum };
  const [first] = of;
  // Angles stand in print as angles, whichever unit a calculator wants.
  if (first && /^(RADIANS|DEGREES)$/.test(name)) return print(first, flat);
  const own = printed[name];
  if (own) return whole(own(first ? typeset(first, flat) : row()));
  const list = of.flatMap((one, index) => [...(index > 0 ? [sign(',')] : []), typeset(one, flat)]);
  return whole(row(called(spelled[name] ?? name.toLowerCase()), fenced('brackets', row(...list))));
}

function casesOf([when, yes, no]: readonly Term[]): readonly Case[] {
  if (!when || !yes) return [];
  const rest =
    no?.kind === 'call' && no.name === 'IF' ? casesOf(no.of) : no ? [{ is: typeset(no) }] : [];
  return [{ is: typeset(yes), when: condition(when) }, ...rest];
}

/** Whether an argument was given is asked by counting it. */
function condition(term: Term): Typeset {
  if (term.kind === 'binary' && term.operator === '=' && term.right.kind === 'number') {
    const { left, right } = term;
    const asked = left.kind === 'call' && left.name === 'COUNT' ? left.of[0] : undefined;
    if (asked)
      return row(
        typeset(asked),
        called(right.value === 0 ? words.reference.isLeftOut : words.reference.isGiven),
      );
  }
  return typeset(term);
}

/** Long round numbers as powers of ten; others in groups of three. */
function number(value: number): Typeset {
  const power = Math.round(Math.log10(value));
  if (Math.abs(power) >= 6 && value === Number(`1e${String(power)}`)) {
    const exponent: Typeset = { kind: 'number', text: String(power).replace('-', '−') };
    return { kind: 'power', base: { kind: 'number', text: '10' }, exponent };
  }
  const [before = '', after] = String(value).split('.');
  const grouped = before.length > 4 ? before.replace(/\B(?=(\d{3})+$)/g, '\u202f') : before;
  return { kind: 'number', text: after === undefined ? grouped : `${grouped}.${after}` };
}
