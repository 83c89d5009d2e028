import { panelDistance, panelFactor } from '../../../../functions/distance/panel.ts';
import { faceOf, type Fixture } from '../../../../functions/fixture/fixture.ts';
import { luxAhead } from '../../../../functions/fixture/rig.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { fixtureIn, numberIn, positiveIn } from '../cells.ts';
import { words } from '../../../words/words.ts';

/** How light falls off, in stops from what it is at the mark. Lengths in metres. */
export interface Curve {
  stopsAt(distance: number): number;
  /** Where it is this many stops from the mark; 0 where not even the face gives so much. */
  distanceAt(stops: number): number;
}

/** The lit face, matt and even: across both ways in metres. */
export type Face = Curve & {
  readonly width: number;
  readonly height: number;
  readonly round: boolean;
};

export interface Falloff {
  readonly lux: number;
  readonly mark: number;
  /** A source without size. */
  readonly point: Curve;
  /** The lit face, where its size is known. */
  readonly face?: Face;
  /** The fixture of the book that it is reckoned from, if it is. */
  readonly fixture?: string;
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
  const mark = positiveIn(given, 'mark', words.falloff.distance);
  if (typeof mark !== 'number') return mark;
  if (mark > farthest) return { reason: words.falloff.tooFar };
  const fixture = fixtureIn(given, 'fixture');
  if (fixture && 'reason' in fixture) return fixture;
  const lux = luxAtMark(given, fixture, mark);
  if (typeof lux !== 'number') return lux;
  const face = faceIn(given, fixture, mark);
  const point = pointCurve(mark);
  const { tolerance } = given;
  const curve = face ?? point;
  const reach = Number(
    (reaches.find(({ value }) => value === given.options['reach']) ?? reaches[0]).value,
  );
  return {
    ...{ lux, mark, point },
    ...(face && { face }),
    ...(fixture && { fixture: fixture.name }),
    depth: [curve.distanceAt(tolerance), curve.distanceAt(-tolerance)],
    shown: [mark / reach, mark * reach],
  };
}

/** What was read there; else what the fixture gives straight ahead at full. */
function luxAtMark(given: Given, fixture: Fixture | undefined, mark: number): number | Undrawn {
  const datum = given.inputs['lux']?.[0]?.[0];
  if (!fixture || (datum && (datum.value !== null || datum.reason !== undefined)))
    return positiveIn(given, 'lux', words.falloff.light);
  const ahead = luxAhead(fixture, mark);
  return ahead > 0 ? ahead : { reason: words.polar.dark(fixture.name) };
}

/** The size that was given goes before that of the fixture. */
function faceIn(given: Given, fixture: Fixture | undefined, mark: number): Face | undefined {
  const [width, height] = [numberIn(given, 'width'), numberIn(given, 'height')];
  const face =
    width !== undefined && height !== undefined
      ? { width, height, round: false }
      : fixture && faceOf(fixture);
  if (!face || !(face.width > 0 && face.height > 0)) return undefined;
  const curve = face.round
    ? discCurve(Math.max(face.width, face.height) / 2, mark)
    : faceCurve(face.width, face.height, mark);
  return { ...face, ...curve };
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

/** In front of a round face of radius r: E goes with 1 / (r² + d²). */
function discCurve(radius: number, mark: number): Curve {
  const atMark = mark ** 2 + radius ** 2;
  return {
    stopsAt: (distance) => Math.log2(atMark / (distance ** 2 + radius ** 2)),
    distanceAt: (stops) => Math.sqrt(Math.max(0, atMark / 2 ** stops - radius ** 2)),
  };
}
