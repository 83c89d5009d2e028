import type { QuantityName } from '../../functions/quantities/names.ts';

/** A product of quantities that has no name of its own, as its dimensions: `~intensity1length-1`. */
export type Compound = `~${string}`;

/**
 * What a part of a formula measures: a quantity; a compound of several; `any` for a number or an
 * empty text written in the formula, or a plain number in a cell, which fit whatever stands beside
 * them; undefined when it cannot be said.
 */
export type Kind = QuantityName | Compound | 'any' | undefined;

export type KnownKind = Exclude<Kind, undefined>;

export function isCompound(kind: Kind): kind is Compound {
  return kind?.startsWith('~') === true;
}

/** One quantity for all, literals aside. */
export function agreed(kinds: readonly Kind[]): Kind {
  const [first, ...others] = kinds.filter((kind) => kind !== 'any');
  if (kinds.length > 0 && first === undefined && !kinds.includes(undefined)) return 'any';
  return others.every((kind) => kind === first) ? first : undefined;
}
