/** A fixture in a place where it could stand, and what one of it does there at full. */
export interface Option {
  readonly name: string;
  /** What it is in the store: options of one item share what is there of it. */
  readonly item: string;
  readonly amps: number;
  readonly cost: number;
  readonly dimmable: boolean;
  /** Lux at each point, in the order of the points. */
  readonly gives: readonly number[];
}

export interface Problem {
  readonly options: readonly Option[];
  /** How many there are of each item. */
  readonly available: ReadonlyMap<string, number>;
  readonly points: readonly { readonly name: string; readonly lux: number }[];
  /** How far off a point may be, in stops. */
  readonly tolerance: number;
  /** What each circuit still carries; without any, power is no question. */
  readonly circuits: readonly { readonly name: string; readonly amps: number }[];
}

/** A set of fixtures that does what is wanted. */
export interface Pick {
  /** How many of each option, in their order. */
  readonly counts: readonly number[];
  /** Share of its light that each gives, from 0 to 1. */
  readonly outputs: readonly number[];
  /** How many of each option hang on each circuit: `[option][circuit]`. */
  readonly onCircuits: readonly (readonly number[])[];
  readonly cost: number;
  /** What every set costs at least, as far as that was shown. */
  readonly least: number;
  /** Surely the cheapest, and not merely the best that was found in the time. */
  readonly proven: boolean;
}

/** What stands in the way, the first that is enough to explain it. */
export type Obstacle =
  /** So many more of these items would do. */
  | { readonly kind: 'items'; readonly lacking: readonly (readonly [item: string, more: number])[] }
  /** The circuits do not carry any set that would do. */
  | { readonly kind: 'circuits' }
  /** These points stay off by so many stops at best, whatever is taken. */
  | { readonly kind: 'levels'; readonly off: readonly (readonly [point: string, stops: number])[] };
