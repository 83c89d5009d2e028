import { panelDistance, panelFactor } from '../../../../functions/distance/panel.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { numberIn, positiveIn } from '../cells.ts';
import { words } from '../../../words/words.ts';

/** How light falls off, in stops from what it is at the mark. Lengths in metres. */
export interface Curve {
  stopsAt(distance: number): number;
  /** Where it is this many stops from the mark; 0 where not even the face gives so much. */
  distanceAt(stops: number): number;
}

export interface Falloff {
  readonly lux: number;
  readonly mark: number;
  /** A source without size. */
  readonly point: Curve;
  /** The lit face, where its size is given. */
  readonly face?: Curve & { readonly width: number; readonly height: number };
  /** The depth in which the light stays within the tolerance of the mark, either way. */
  readonly depth: readonly [near: number, far: number];
  readonly shown: readonly [near: number, far: number];
}

export const reaches = [
  { value: '2', words: words.falloff.halfToTwice },
  { value: '4', words: words.falloff.quarterToFour },
  { value: '1.5', words: words.falloff.close },
] as const;

/** Stands farther than this, a source is no lamp on a set. */
const farthest = 10_000;

export function readFalloff(given: Given): Falloff | Undrawn {
  const lux = positiveIn(given, 'lux', words.falloff.light);
  if (typeof lux !== 'number') return lux;
  const mark = positiveIn(given, 'mark', words.falloff.distance);
  if (typeof mark !== 'number') return mark;
  if (mark > farthest) return { reason: words.falloff.tooFar };
  const [width, height] = [numberIn(given, 'width'), numberIn(given, 'height')];
  const face =
    width !== undefined && height !== undefined && width > 0 && height > 0
      ? { width, height, ...faceCurve(width, height, mark) }
      : undefined;
  const point = pointCurve(mark);
  const { tolerance } = given;
  const curve = face ?? point;
  const reach = Number(
    (reaches.find(({ value }) => value === given.options['reach']) ?? reaches[0]).value,
  );
  return {
    ...{ lux, mark, point },
    ...(face && { face }),
    depth: [curve.distanceAt(tolerance), curve.distanceAt(-tolerance)],
    shown: [mark / reach, mark * reach],
  };
}

/** E = E₀ · (d₀ / d)²: two stops for each doubling. */
function pointCurve(mark: number): Curve {
  return {
    stopsAt: (distance) => 2 * Math.log2(mark / distance),
    distanceAt: (stops) => mark * 2 ** (-stops / 2),
  };
}

/** As PANELLUX has it, straight in front of an evenly lit matt face. */
function faceCurve(width: number, height: number, mark: number): Curve {
  const atMark = panelFactor(width, height, mark);
  return {
    stopsAt: (distance) => Math.log2(panelFactor(width, height, distance) / atMark),
    distanceAt(stops) {
      const factor = atMark * 2 ** stops;
      return factor < Math.PI ? panelDistance(width, height, factor) : 0;
    },
  };
}
