import { faceOf } from '../../../../functions/fixture/fixture.ts';
import type { Placed } from '../../../../functions/fixture/rig.ts';
import type { Vector } from '../../../../functions/fixture/rectangle.ts';
import type { Face } from '../../../../functions/fixture/throw.ts';

/** A place beside, above and before a light, by its own axes. */
export function beside(
  { at, right, up, forward }: Placed,
  across: number,
  high: number,
  ahead: number,
): Vector {
  const on = (axis: 0 | 1 | 2) =>
    at[axis] + right[axis] * across + up[axis] * high + forward[axis] * ahead;
  return [on(0), on(1), on(2)];
}

/** Points around the rim of a round opening. */
const around = 20;

/** The rim of a face, so far before the light or behind it and so much larger or smaller. */
export function rimOf(
  light: Placed,
  { width, height, round }: Face,
  ahead = 0,
  times = 1,
): readonly Vector[] {
  const [w, h] = [(width / 2) * times, (height / 2) * times];
  if (!round)
    return [
      [-w, -h],
      [w, -h],
      [w, h],
      [-w, h],
    ].map(([across = 0, high = 0]) => beside(light, across, high, ahead));
  return Array.from({ length: around }, (_, index) => {
    const turn = (index * 2 * Math.PI) / around;
    return beside(light, w * Math.cos(turn), h * Math.sin(turn), ahead);
  });
}

export const cornersOf = (light: Placed, face: Face): readonly Vector[] => rimOf(light, face);

/**
 * A light's body, in metres: its real face, never smaller than can be seen. A round opening goes back
 * to a narrow end, a flat one is a slab.
 */
export function bodyOf(
  light: Placed,
  least: number,
): { face: readonly Vector[]; back: readonly Vector[] } {
  const real = faceOf(light.fixture);
  const bare = real.width === 0 && real.height === 0;
  const face: Face = {
    width: Math.max(real.width, real.round || bare ? least : least * 0.3),
    height: Math.max(real.height, real.round || bare ? least : least * 0.3),
    round: real.round || bare,
  };
  const deep = face.round
    ? Math.max(face.width, face.height) * 1.15
    : light.lamp
      ? least * 0.16
      : least * 0.42;
  return { face: rimOf(light, face), back: rimOf(light, face, -deep, face.round ? 0.55 : 0.9) };
}

/** The corners of the smallest outline around flat points, in order (Andrew’s monotone chain). */
export function hull(
  points: readonly (readonly [number, number])[],
): readonly (readonly [number, number])[] {
  const sorted = points.toSorted(([a, b], [c, d]) => a - c || b - d);
  const half = (list: readonly (readonly [number, number])[]) => {
    const kept: (readonly [number, number])[] = [];
    for (const at of list) {
      while (kept.length > 1 && turn(kept.at(-2)!, kept.at(-1)!, at) <= 0) kept.pop();
      kept.push(at);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.toReversed())];
}

const turn = (
  [ax, ay]: readonly [number, number],
  [bx, by]: readonly [number, number],
  [cx, cy]: readonly [number, number],
): number => (bx - ax) * (cy - ay) - (by - ay) * (cx - ax);
