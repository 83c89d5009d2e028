import { contours } from 'd3-contour';
import type { Vector } from '../../../../functions/fixture/rectangle.ts';
import type { Layout, Spot } from './layout.ts';
import { thirdOf } from './read.ts';
import { luxSpread } from './spread.ts';

/** Pixels of one place of the grid: at rest, and while something is moved. */
const fine = 6;
const coarse = 15;
/** Places beyond each edge: outlines turn back out there, where the picture is cut off. */
const beyond = 1;
/** Zero light has no logarithm; nothing on a set is so many stops down. */
const black = -40;

/** A closed line on the page. */
export type Ring = readonly Spot[];

/** Stops from the key over the picture, and where they come to a level. */
export interface Levels {
  readonly lowest: number;
  readonly highest: number;
  /** Outlines of where there are at least so many stops; their insides are counted even and odd. */
  atLeast(stops: number): readonly Ring[];
}

export function levelsOf(layout: Layout): Levels | undefined {
  const { set, box, frame, metre } = layout;
  const { lines, lights, key, axes, rough } = set;
  if (!lines) return undefined;
  const cell = rough ? coarse : fine;
  const [width, height] = [box.right - box.left, box.bottom - box.top];
  const inside = [width, height].map((size) => Math.max(8, Math.round(size / cell)));
  const [stepX, stepY] = [width / (inside[0] ?? 8), height / (inside[1] ?? 8)];
  const [columns, rows] = [(inside[0] ?? 8) + 2 * beyond, (inside[1] ?? 8) + 2 * beyond];
  const across: Vector = unit(axes[0], stepX / metre);
  const down: Vector = unit(axes[1], -stepY / metre);
  const from: number[] = [0, 0, 0];
  from[axes[0]] = frame.left - ((beyond - 0.5) * stepX) / metre;
  from[axes[1]] = frame.top + ((beyond - 0.5) * stepY) / metre;
  from[thirdOf(axes)] = lines.depth;
  const lux = luxSpread(
    lights.map(({ placed }) => placed),
    {
      ...{ from: [from[0] ?? 0, from[1] ?? 0, from[2] ?? 0], along: across, down, columns, rows },
      ...{ facing: lines.look, receptor: lines.receptor },
    },
  );
  const stops = Array.from(lux, (value) =>
    value > 0 ? Math.min(-black, Math.log2(value / key.lux)) : black,
  );
  const found = contours().size([columns, rows]).smooth(true);
  const known = new Map<number, readonly Ring[]>();
  const outline = (level: number): readonly Ring[] =>
    found
      .contour(stops, level)
      .coordinates.flatMap((polygon) =>
        polygon.map((ring) =>
          ring.map(([x = 0, y = 0]): Spot => [
            box.left + (x - beyond) * stepX,
            box.top + (y - beyond) * stepY,
          ]),
        ),
      );
  return {
    lowest: stops.reduce((least, value) => Math.min(least, value), Infinity),
    highest: stops.reduce((most, value) => Math.max(most, value), -Infinity),
    atLeast(level) {
      const rings = known.get(level) ?? outline(level);
      known.set(level, rings);
      return rings;
    },
  };
}

function unit(axis: 0 | 1 | 2, size: number): Vector {
  return [axis === 0 ? size : 0, axis === 1 ? size : 0, axis === 2 ? size : 0];
}
