/** A piece of the kit that goes into a lamp: a scrim, a net, a diffusion. */
export interface Piece {
  readonly name: string;
  /** Stops that it loses. */
  readonly stops: number;
}

/** A light as it stands today and what can be done with it. Metres; shares from 0 to 1. */
export interface SetLight {
  readonly name: string;
  readonly distance?: number;
  /** Nearest and farthest that it may stand. */
  readonly nearest?: number;
  readonly farthest?: number;
  readonly output?: number;
  /** An evenly lit face of this size: its light is reckoned as a rectangle’s, not by inverse squares. */
  readonly face?: { readonly width: number; readonly height: number };
  /** Names of the pieces that are in it. */
  readonly pieces: readonly string[];
}

/** A point of the set: what should be there, what is there, and from which light. In lux. */
export interface SetPoint {
  readonly name: string;
  readonly wanted: number;
  /** Of each light, in their order. */
  readonly gives: readonly number[];
  /** Everything else: ambient, and lamps that are not asked. */
  readonly rest: number;
  /** Which light it is corrected with. */
  readonly light: number;
}

export interface LitSet {
  readonly lights: readonly SetLight[];
  /** The key first. */
  readonly points: readonly SetPoint[];
  readonly kit: readonly Piece[];
  /** In stops. */
  readonly tolerance: number;
}

/** How far a point is off in stops once the lights are multiplied by these factors. */
export function offAt({ wanted, gives, rest }: SetPoint, factors: readonly number[]): number {
  const lux = gives.reduce((sum, own, at) => sum + own * (factors[at] ?? 1), rest);
  return Math.log2(lux / wanted);
}
