import { element, rounded, type Drawn } from '../../kit/element.ts';
import type { Box } from '../../kit/ground.ts';
import { boxAround } from '../../kit/places.ts';
import { lettering, widthOf } from '../../kit/words.ts';
import type { Layout, Spot } from './layout.ts';
import type { Levels, Ring } from './levels.ts';

/** Whole stops that are drawn; beyond them nobody lights by a plan. */
const reach = { below: -6, above: 5 };

/** Each whole stop that occurs, the key's own always among them. */
export function wholeStops({ lowest, highest }: Levels): readonly number[] {
  const [low, high] = [
    Math.max(reach.below, Math.ceil(lowest)),
    Math.min(reach.above, Math.floor(highest)),
  ];
  return Array.from({ length: Math.max(0, high - low + 1) }, (_, index) => low + index);
}

const written = ([x, y]: Spot): string => `${rounded(x)} ${rounded(y)}`;

const areaPath = (rings: readonly Ring[]): string =>
  rings.map((ring) => `M${ring.map(written).join('L')}Z`).join('');

/** Ground that is lit more is warmer: one thin coat for each stop. */
export function coats({ theme }: Layout, levels: Levels, whole: readonly number[]): Drawn[] {
  return whole.map((stops) =>
    element('path', {
      d: areaPath(levels.atLeast(stops)),
      ...{ fill: theme.glow, 'fill-opacity': 0.085, 'fill-rule': 'evenodd' },
    }),
  );
}

/** Where it reads as the key within the tolerance: hatched, so that it is seen without colour. */
export function zone(layout: Layout, levels: Levels): Drawn[] {
  const { theme, tolerance, letters, box } = layout;
  const rings = [...levels.atLeast(-tolerance), ...levels.atLeast(tolerance)];
  return [
    element('path', {
      d: areaPath(rings),
      ...{ fill: theme.glow, 'fill-opacity': 0.16, 'fill-rule': 'evenodd' },
    }),
    element('path', {
      d: hatching(rings, box, letters * 0.55),
      ...{ fill: 'none', stroke: theme.lamp, 'stroke-width': 0.8, 'stroke-opacity': 0.6 },
    }),
  ];
}

/** Slanting lines inside rings, counted even and odd: x + y is the same along each. */
function hatching(
  rings: readonly Ring[],
  { left, top, right, bottom }: Box,
  apart: number,
): string {
  const crossings = new Map<number, number[]>();
  for (const ring of rings)
    ring.forEach(([x1, y1], index) => {
      const [x2, y2] = ring[index + 1] ?? [x1, y1];
      const [from, to] = [x1 + y1, x2 + y2];
      const [low, high] = [Math.min(from, to), Math.max(from, to)];
      for (let line = Math.ceil(low / apart); line * apart < high; line += 1) {
        const share = (line * apart - from) / (to - from);
        const known = crossings.get(line) ?? [];
        known.push(x1 + share * (x2 - x1));
        crossings.set(line, known);
      }
    });
  const within = (x: number) => Math.min(right, Math.max(left, x));
  return [...crossings]
    .flatMap(([line, xs]) => {
      const sorted = xs.toSorted((a, b) => a - b);
      return sorted.flatMap((x, index) => {
        const end = sorted[index + 1];
        if (index % 2 === 1 || end === undefined || end - x < 0.5) return [];
        const y = (at: number) => Math.min(bottom, Math.max(top, line * apart - at));
        return [`M${written([within(x), y(x)])}L${written([within(end), y(end)])}`];
      });
    })
    .join('');
}

/** Runs of a ring inside the picture: outlines turn back beyond its edges. */
function insideRuns(ring: Ring, { left, right, top, bottom }: Box): readonly Ring[] {
  const isInside = ([x, y]: Spot) => x >= left && x <= right && y >= top && y <= bottom;
  const runs: Spot[][] = [[]];
  ring.forEach((at, index) => {
    const next = ring[index + 1];
    if (!next) return;
    if (!isInside(at) && !isInside(next)) runs.push([]);
    else {
      const run = runs.at(-1) ?? [];
      if (run.length === 0) run.push(at);
      run.push(next);
    }
  });
  // The ring begins somewhere along a run: its end goes on with its beginning.
  const [first = [], last = []] = [runs[0], runs.at(-1)];
  if (runs.length > 1 && first.length > 0 && last.length > 0) {
    runs[0] = [...last, ...first.slice(1)];
    runs.pop();
  }
  return runs.filter(({ length }) => length > 1);
}

export interface StopLine {
  readonly stops: number;
  readonly runs: readonly Ring[];
}

export const stopLines = ({ box }: Layout, levels: Levels, whole: readonly number[]): StopLine[] =>
  [...new Set([...whole, 0])].map((stops) => ({
    stops,
    runs: levels.atLeast(stops).flatMap((ring) => insideRuns(ring, box)),
  }));

/** More light solid, less dashed, the key’s own line heavy. */
export function drawnLines({ theme }: Layout, lines: readonly StopLine[]): Drawn[] {
  return lines
    .filter(({ runs }) => runs.length > 0)
    .map(({ stops, runs }) =>
      element('path', {
        d: runs.map((run) => `M${run.map(written).join('L')}`).join(''),
        ...{ fill: 'none', 'stroke-linejoin': 'round', 'stroke-linecap': 'butt' },
        ...lineLook(stops, theme),
      }),
    );
}

export const lineLook = (stops: number, theme: Layout['theme']): Drawn['attributes'] =>
  stops === 0
    ? { stroke: theme.lamp, 'stroke-width': 2 }
    : stops > 0
      ? { stroke: theme.mute, 'stroke-width': 1 }
      : { stroke: theme.mute, 'stroke-width': 1, 'stroke-dasharray': '5 3.5' };

export const stopName = (stops: number): string =>
  stops === 0 ? '0' : `${stops < 0 ? '−' : '+'}${Math.abs(stops)}`;

/** A label on each line that is long enough, where nothing else stands. */
export function lineLabels({ theme, small, letters, places }: Layout, lines: readonly StopLine[]) {
  return lines.flatMap(({ stops, runs }) =>
    runs.flatMap((run): Drawn[] => {
      const length = run.reduce((sum, at, index) => sum + gap(at, run[index + 1] ?? at), 0);
      if (length < letters * 6) return [];
      const text = stopName(stops);
      const half = widthOf(text, small) / 2 + 2;
      const tries = [0.5, 0.35, 0.65, 0.2, 0.8, 0.42, 0.58, 0.1, 0.9, 0.28, 0.72];
      const spots = tries.map((share) => run[Math.floor(share * (run.length - 1))] ?? [0, 0]);
      const spot = spots.find(([x, y]) => places.isFree(boxAround(x, y, half, small * 0.6)));
      if (!spot) return [];
      const [x, y] = spot;
      // Other labels of lines keep a distance, so that they can be told apart.
      places.take(boxAround(x, y, half * 2, small));
      return [
        lettering(x, y + small * 0.34, text, {
          ...{ fill: stops === 0 ? theme.lamp : theme.mute, size: small, anchor: 'middle' },
          ...{ weight: stops === 0 ? 700 : 600, halo: theme.sheet },
        }),
      ];
    }),
  );
}

const gap = ([a, b]: Spot, [c, d]: Spot): number => Math.hypot(c - a, d - b);
