import type { QuantityName } from '../../functions/quantities/names.ts';

/**
 * What a part of a formula measures: a quantity; `any` for a number or an empty
 * text written in the formula, which fits whatever stands beside it; undefined when it cannot be said.
 */
export type Kind = QuantityName | 'any' | undefined;

/** One quantity for all, literals aside. */
export function agreed(kinds: readonly Kind[]): Kind {
  const [first, ...others] = kinds.filter((kind) => kind !== 'any');
  if (kinds.length > 0 && first === undefined && !kinds.includes(undefined)) return 'any';
  return others.every((kind) => kind === first) ? first : undefined;
}
