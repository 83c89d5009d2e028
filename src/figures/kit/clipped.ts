import { rounded } from './element.ts';
import type { Box } from './ground.ts';

type Spot = readonly [x: number, y: number];

/** The part of a straight line inside a box (Liang and Barsky), or nothing. */
function inside([x1, y1]: Spot, [x2, y2]: Spot, box: Box): readonly [Spot, Spot] | undefined {
  const [dx, dy] = [x2 - x1, y2 - y1];
  let [from, to] = [0, 1];
  for (const [step, room] of [
    [-dx, x1 - box.left],
    [dx, box.right - x1],
    [-dy, y1 - box.top],
    [dy, box.bottom - y1],
  ] as const) {
    if (step === 0 && room < 0) return undefined;
    if (step < 0) from = Math.max(from, room / step);
    if (step > 0) to = Math.min(to, room / step);
  }
  if (from > to) return undefined;
  return [
    [x1 + from * dx, y1 + from * dy],
    [x1 + to * dx, y1 + to * dy],
  ];
}

/** A line through these places as the data of a path, as far as it lies in the box; empty if nowhere. */
export function clipped(places: readonly Spot[], box: Box): string {
  let [path, last] = ['', ''];
  for (const [index, place] of places.slice(1).entries()) {
    const part = inside(places[index] ?? place, place, box);
    if (!part) continue;
    const [start, end] = part.map(([x, y]) => `${rounded(x)} ${rounded(y)}`);
    path += start === last ? `L${end}` : `M${start}L${end}`;
    last = end ?? '';
  }
  return path;
}
