import { uvFromXY, type XY } from '../../../../functions/colour/chromaticity.ts';
import { usualTolerance } from '../../../../functions/colour/colourWords.ts';
import { nearestOnLocus, type Nearest } from '../../../../functions/colour/nearestOnLocus.ts';
import { words } from '../../../words/words.ts';
import type { Block, Given, Undrawn } from '../../figure.ts';
import { numberIn, numberOf } from '../cells.ts';
import type { DiagramName } from './diagram.ts';

export interface Colour {
  readonly at: XY;
  /** Colour temperature and Duv, where it is near enough to the locus to have them. */
  readonly tinted: Nearest | undefined;
}

export interface Source extends Colour {
  readonly name: string;
  /** After correction, where that is elsewhere. */
  readonly then?: Colour;
}

export interface Colours {
  readonly sources: readonly Source[];
  readonly white?: Colour;
  readonly tolerance: { readonly mired: number; readonly duv: number };
  readonly diagram: DiagramName;
  readonly whole: boolean;
}

/** More would be no picture any more. */
const most = 24;
/** Farther from the locus a colour temperature says nothing. */
const farthest = 0.05;
/** Closer than this in x and y nothing has moved. */
const still = 2e-4;

export function readColours(given: Given): Colours | Undrawn {
  const { inputs, options } = given;
  const rows = inputs['names'] ?? [];
  const sources: Source[] = [];
  for (const [index, [name]] of rows.entries()) {
    const at = pointIn(inputs['x'], inputs['y'], index);
    if (typeof name?.value !== 'string' || !at) continue;
    if (!isLight(at)) return { reason: words.chromaticity.outside(name.value.trim()) };
    const moved = pointIn(inputs['thenX'], inputs['thenY'], index);
    const away = moved && Math.hypot(moved.x - at.x, moved.y - at.y) > still && isLight(moved);
    sources.push({ name: name.value.trim(), ...colour(at), ...(away && { then: colour(moved) }) });
  }
  if (sources.length === 0) return { reason: words.chromaticity.none };
  if (sources.length > most) return { reason: words.chromaticity.tooMany(most, sources.length) };
  const white = pointIn(inputs['targetX'], inputs['targetY'], 0);
  return {
    sources,
    ...(white && isLight(white) && { white: colour(white) }),
    tolerance: {
      mired: numberIn(given, 'mired') ?? usualTolerance.mired,
      duv: numberIn(given, 'duv') ?? usualTolerance.duv,
    },
    diagram: options['diagram'] === 'xy' ? 'xy' : 'uv',
    whole: options['extent'] === 'whole',
  };
}

function pointIn(xs: Block | undefined, ys: Block | undefined, row: number): XY | undefined {
  const [x, y] = [numberOf(xs?.[row]?.[0]), numberOf(ys?.[row]?.[0])];
  return x === undefined || y === undefined ? undefined : { x, y };
}

/** Inside the triangle that all chromaticities lie in. */
const isLight = ({ x, y }: XY): boolean => x >= 0 && y > 0.001 && x + y <= 1;

function colour(at: XY): Colour {
  const nearest = nearestOnLocus(uvFromXY(at));
  const has = nearest !== undefined && Math.abs(nearest.duv) <= farthest;
  return { at, tinted: has ? nearest : undefined };
}
