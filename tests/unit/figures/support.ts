import { exampleFixtures } from '../../../functions/fixture/exampleFixtures.ts';
import { exampleSpectra } from '../../../functions/spectrum/exampleSpectra.ts';
import { defaultWriting } from '../../../functions/quantities/settings.ts';
import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Block, Datum, Given, Made, Undrawn } from '../../../src/figures/figure.ts';
import { kindOf } from '../../../src/figures/kinds.ts';
import type { Drawn } from '../../../src/figures/kit/element.ts';
import { fileTheme } from '../../../src/figures/kit/theme.ts';

type Value = number | string | null | Datum;

const datum = (value: Value, quantity?: QuantityName): Datum =>
  typeof value === 'object' && value !== null
    ? value
    : { value, ...(quantity && typeof value === 'number' && { quantity }) };

/** A column of cells that measure one thing. */
export const column = (values: readonly Value[], quantity?: QuantityName): Block =>
  values.map((value) => [datum(value, quantity)]);

export const single = (value: Value, quantity?: QuantityName): Block => column([value], quantity);

export const waits: Datum = { value: null, reason: 'waiting for Reading (C3)', waits: true };

export function make(kind: string, given: Partial<Given>): Made | Undrawn {
  const found = kindOf(kind);
  if (!found) throw new Error(`There is no kind ${kind}.`);
  return found.make({
    writing: defaultWriting,
    tolerance: 1 / 4,
    fixtures: exampleFixtures,
    spectra: exampleSpectra,
    inputs: {},
    options: {},
    ...given,
  });
}

export function made(kind: string, given: Partial<Given>): Made {
  const result = make(kind, given);
  if ('reason' in result) throw new Error(result.reason);
  return result;
}

export const drawnAt = (figure: Made, width = 800, letters = 13): Drawn => {
  const { children, width: wide, height } = figure.draw(fileTheme, { width, letters });
  return { tag: 'svg', attributes: { width: wide, height }, children };
};

/** Every element of a drawing, parents before children. */
export const every = (drawn: Drawn): readonly Drawn[] => [
  drawn,
  ...drawn.children.flatMap((child) => (typeof child === 'string' ? [] : every(child))),
];

/** The words of an element, its pieces in one. */
export const wordsOf = (drawn: Drawn): string =>
  drawn.children.map((child) => (typeof child === 'string' ? child : wordsOf(child))).join('');

/** The text element that says exactly this. */
export function textSaying(drawn: Drawn, words: string): Drawn {
  const found = every(drawn).filter(({ tag }) => tag === 'text');
  const one = found.find((text) => wordsOf(text) === words);
  if (!one) throw new Error(`“${words}” is not among ${found.map(wordsOf).join(' | ')}.`);
  return one;
}

export const texts = (drawn: Drawn): readonly string[] =>
  every(drawn)
    .filter(({ tag }) => tag === 'text')
    .map(wordsOf);

/** Where the signs stand: x of each point of a ladder, from top to bottom. */
export const signs = (drawn: Drawn): readonly number[] =>
  every(drawn)
    .filter(({ tag, attributes }) => tag === 'g' && attributes['transform'] !== undefined)
    .map(({ attributes }) =>
      Number(/translate\((\S+) /.exec(String(attributes['transform']))?.[1]),
    );
