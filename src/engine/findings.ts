import type { QuantityName } from '../../functions/quantities/names.ts';
import type { BinaryOperator } from '../formula/types.ts';
import type { KnownKind } from './kinds.ts';

/** A part of a formula and what it measures. */
export interface Part {
  /** As written; empty inside a name. */
  readonly text: string;
  readonly kind: KnownKind;
}

/**
 * Something in a formula that does not go together, as facts; `src/check` has the words.
 * `inside` is the name in whose formula it stands.
 */
export type Finding = { readonly inside?: string } & (
  | {
      readonly about: 'argument';
      readonly call: string;
      readonly parameter: string;
      readonly wanted: readonly QuantityName[];
      readonly given: Part;
    }
  /** Levels held against each other are of one kind of light. */
  | {
      readonly about: 'levels';
      readonly call: string;
      readonly first: Part;
      readonly other: Part;
    }
  | {
      readonly about: 'operation';
      readonly operator: BinaryOperator;
      readonly left: Part;
      readonly right: Part;
    }
  /** Arguments or branches that should be of one kind; with one part, a range that holds several. */
  | { readonly about: 'joined'; readonly call: string; readonly parts: readonly [Part, Part] }
  /** Adding these up, or averaging them, does not give more of the same. */
  | { readonly about: 'totalled'; readonly call: string; readonly given: Part }
  /** Looked for among things of another kind. */
  | { readonly about: 'sought'; readonly call: string; readonly key: Part; readonly among: Part }
  /** Sines and their like take radians, angles are kept in degrees. */
  | { readonly about: 'radians'; readonly call: string; readonly given: Part }
  /** The cell says that it measures something else. */
  | { readonly about: 'result'; readonly set: QuantityName; readonly given: KnownKind }
  /** What the cell should come to is of another kind than the cell. */
  | { readonly about: 'target'; readonly set: QuantityName; readonly given: KnownKind }
);
