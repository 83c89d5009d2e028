import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Fixture } from '../../../functions/fixture/fixture.ts';
import type { Block, Datum, Given, Undrawn } from '../figure.ts';
import { words } from '../../words/words.ts';

/** The number of a single cell; undefined where it was not given or waits. */
export function numberIn({ inputs }: Given, name: string): number | undefined {
  return numberOf(inputs[name]?.[0]?.[0]);
}

export const numberOf = (datum: Datum | undefined): number | undefined =>
  typeof datum?.value === 'number' ? datum.value : undefined;

export const quantityIn = (block: Block | undefined): QuantityName | undefined =>
  block?.flat().find(({ value, quantity }) => typeof value === 'number' && quantity)?.quantity;

/** A number above zero, or why there is none: what the cell itself says, else what it should be. */
export function positiveIn(given: Given, name: string, what: string): number | Undrawn {
  const datum = given.inputs[name]?.[0]?.[0];
  const value = numberOf(datum);
  if (value !== undefined && value > 0) return value;
  if (datum?.reason !== undefined) return { reason: `${what}: ${datum.reason}` };
  return {
    reason: value === undefined ? words.falloff.empty(what) : words.falloff.aboveZero(what),
  };
}

/** The fixture of the book that a cell names; undefined where the cell is empty or not given. */
export function fixtureIn(given: Given, input: string): Fixture | Undrawn | undefined {
  const datum = given.inputs[input]?.[0]?.[0];
  if (datum?.reason !== undefined) return { reason: datum.reason };
  const name = String(datum?.value ?? '').trim();
  if (name === '') return undefined;
  const fixture = given.fixtures.named(name);
  if (fixture === undefined) return { reason: words.polar.unknown(name) };
  if (typeof fixture === 'string') return { reason: words.polar.unreadable(name, fixture) };
  return fixture;
}
