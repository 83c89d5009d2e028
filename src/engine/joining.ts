import { isPlain, isWords, together } from './algebra.ts';
import type { Part } from './findings.ts';
import type { Handed, Rule } from './handed.ts';
import type { Kind } from './kinds.ts';

/** One kind for several arguments. */
export function joined(handed: Handed, indices: readonly number[]): Kind {
  const parts = indices.flatMap((index) =>
    handed.kinds(index).map((kind) => (kind === undefined ? undefined : handed.part(index, kind))),
  );
  return oneKind(handed, parts);
}

/**
 * The same where words may stand for a number: `IF(B2=0,"no light",B2)` is plain and no mistake.
 * A cell with words in its place is one.
 */
export function chosen(handed: Handed, indices: readonly number[]): Kind {
  const isWorded = (index: number) =>
    handed.node(index)?.kind !== 'reference' && handed.kinds(index).some(isWords);
  const numbers = indices.filter((index) => !isWorded(index));
  if (numbers.length === 0) return joined(handed, indices);
  const kind = joined(handed, numbers);
  return numbers.length < indices.length && kind !== 'any' ? undefined : kind;
}

/** The kind that all parts have; hears the first that has another. */
function oneKind(handed: Handed, parts: readonly (Part | undefined)[]): Kind {
  let common: Kind = 'any';
  let named: Part | undefined;
  let isKnown = true;
  for (const part of parts) {
    isKnown &&= part !== undefined;
    if (!part || common === undefined) continue;
    const both = together(common, part.kind);
    if ('clash' in both) {
      if (named) handed.hear({ about: 'joined', call: handed.call.name, parts: [named, part] });
      return undefined;
    }
    if (!isPlain(part.kind)) named ??= part;
    common = both.kind;
  }
  return isKnown ? common : undefined;
}

/** The arguments from one on, or every second one. */
function indicesFrom({ count }: Handed, start: number, step = 1): readonly number[] {
  const indices: number[] = [];
  for (let index = start; index < count; index += step) indices.push(index);
  return indices;
}

export const allOf: Rule = (handed) => joined(handed, indicesFrom(handed, 0));

export const choice =
  (start: number, step = 1): Rule =>
  (handed) =>
    chosen(handed, indicesFrom(handed, start, step));
