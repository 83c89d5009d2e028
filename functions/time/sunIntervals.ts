import type { Ephemeris, Place } from '../ephemeris.ts';

/** Minutes of a day. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** How a window sees the sky: degrees. */
export interface Sight {
  /** Where it faces, clockwise from true north. */
  readonly bearing: number;
  /** What stands opposite hides the sun up to here. */
  readonly skyline: number;
  /** From farther aside than this the sun does not come in. */
  readonly sideways: number;
}

const minute = 60_000;
/** A stay in the window that is shorter than this may be missed. */
const step = 6;
const dayLength = 1440;

/** The signed angle from one direction to another, from −180 to 180. */
const turn = (from: number, to: number): number => ((((to - from + 180) % 360) + 360) % 360) - 180;

/** When on a day the sun comes in, in order; an edge is found to a second by halving. */
export function sunIntervals(
  sky: Ephemeris,
  midnight: number,
  place: Place,
  { bearing, skyline, sideways }: Sight,
): readonly Interval[] {
  const comesIn = (at: number): boolean => {
    const { altitude, azimuth } = sky.sun(midnight + at * minute, place);
    return altitude > skyline && Math.abs(turn(bearing, azimuth)) < sideways;
  };
  const edge = (before: number, after: number, wasIn: boolean): number => {
    let [low, high] = [before, after];
    while (high - low > 1 / 60) {
      const middle = (low + high) / 2;
      if (comesIn(middle) === wasIn) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const found: Interval[] = [];
  let from = comesIn(0) ? 0 : undefined;
  for (let at = step; at <= dayLength; at += step) {
    const isIn = comesIn(at);
    if (isIn && from === undefined) from = edge(at - step, at, false);
    else if (!isIn && from !== undefined) {
      found.push({ from, to: edge(at - step, at, true) });
      from = undefined;
    }
  }
  return from === undefined ? found : [...found, { from, to: dayLength }];
}
