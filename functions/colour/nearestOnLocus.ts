import { uvOf, type UV } from './chromaticity.ts';
import { tristimulus } from './observer.ts';
import { planckian } from './planck.ts';

/** Range of the table in kelvin, and its step: fine enough that Ohno’s correction factor falls away. */
export const coldest = 1000;
export const hottest = 100_000;
const step = 1.0025;

/** Up to here the distance is found by a triangle, from there by a parabola (Ohno 2013, chapter 3). */
const flat = 0.002;

interface Entry extends UV {
  readonly kelvin: number;
}

let table: readonly Entry[] | undefined;

/** The locus in even steps, integrated when it is first asked for. */
function locus(): readonly Entry[] {
  const entries = Math.ceil(Math.log(hottest / coldest) / Math.log(step)) + 2;
  table ??= Array.from({ length: entries }, (_, index) => {
    const kelvin = coldest * step ** (index - 1);
    return { kelvin, ...uvOf(tristimulus((metres) => planckian(metres, kelvin))) };
  });
  return table;
}

export interface Nearest {
  readonly kelvin: number;
  readonly duv: number;
}

/**
 * Colour temperature and Duv of a chromaticity: the nearest point of the Planckian locus in u, v
 * and the distance from it, positive above (green). Y. Ohno, LEUKOS 10 (2014), the combined
 * triangular and parabolic solution. Undefined where the nearest point is beyond the table.
 */
export function nearestOnLocus(point: UV): Nearest | undefined {
  const entries = locus();
  const best = nearestEntry(entries, point);
  const [before, nearest, after] = [entries[best - 1], entries[best], entries[best + 1]];
  if (!before || !nearest || !after) return undefined;
  const distance = ({ u, v }: UV): number => Math.hypot(point.u - u, point.v - v);
  const distances = [distance(before), distance(nearest), distance(after)] as const;
  const triangle = byTriangle(point, before, after, distances);
  return Math.abs(triangle.duv) < flat
    ? triangle
    : byParabola([before, nearest, after], distances, Math.sign(triangle.duv));
}

function nearestEntry(entries: readonly Entry[], point: UV): number {
  let best = 0;
  let least = Infinity;
  for (let index = 0; index < entries.length; index++) {
    const { u, v } = entries[index] ?? point;
    const squared = (point.u - u) ** 2 + (point.v - v) ** 2;
    if (squared < least) {
      best = index;
      least = squared;
    }
  }
  return best;
}

type Three<T> = readonly [T, T, T];

function byTriangle(
  point: UV,
  before: Entry,
  after: Entry,
  [fromBefore, , fromAfter]: Three<number>,
): Nearest {
  const chord = Math.hypot(after.u - before.u, after.v - before.v);
  const along = (fromBefore ** 2 - fromAfter ** 2 + chord ** 2) / (2 * chord);
  const foot = before.v + ((after.v - before.v) * along) / chord;
  const height = Math.sqrt(Math.max(0, fromBefore ** 2 - along ** 2));
  return {
    kelvin: before.kelvin + ((after.kelvin - before.kelvin) * along) / chord,
    duv: height * Math.sign(point.v - foot),
  };
}

/** The least of the parabola through three distances, reckoned from the middle temperature. */
function byParabola(
  [before, nearest, after]: Three<Entry>,
  [first, middle, last]: Three<number>,
  side: number,
): Nearest {
  const [down, up] = [before.kelvin - nearest.kelvin, after.kelvin - nearest.kelvin];
  const [toFirst, toLast] = [(first - middle) / down, (last - middle) / up];
  const bend = (toLast - toFirst) / (up - down);
  const slope = toFirst - bend * down;
  const change = -slope / (2 * bend);
  return {
    kelvin: nearest.kelvin + change,
    duv: side * (middle + (slope * change) / 2),
  };
}
