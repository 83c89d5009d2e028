import type { Chance } from '../mutated.ts';
import type { Tried } from '../tried.ts';

/** A way into the book: spoils an input that it knows and tries it. Throws nothing, whatever comes. */
export interface Door {
  readonly name: string;
  readonly tried: (next: Chance) => Tried;
  /** How often it is tried beside the others; slow ones less. */
  readonly share: number;
  /** Of a hundred inputs, how many at least are taken: a door that refused everything would prove nothing. */
  readonly takes: number;
}
