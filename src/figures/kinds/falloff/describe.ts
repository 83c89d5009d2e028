import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Surroundings } from '../../figure.ts';
import { said, saidNumber } from '../../kit/words.ts';
import type { Falloff } from './read.ts';
import { words } from '../../../words/words.ts';

export function describeFalloff(falloff: Falloff, surroundings: Surroundings): readonly string[] {
  const { lux, mark, point, face, fixture, shown } = falloff;
  const { writing } = surroundings;
  const length = (value: number) => said('length', value, writing, lengthFormat(value, writing));
  const curve = face ?? point;
  const [near, far] = shown;
  const ends = words.falloff.ends(
    length(near),
    apart(curve.stopsAt(near)),
    length(far),
    apart(curve.stopsAt(far)),
  );
  return [
    depthInWords(falloff, surroundings),
    words.falloff.atMark(said('length', mark, writing), said('illuminance', lux, writing)),
    ends,
    ...(face
      ? [
          (face.round
            ? words.falloff.lens(length(Math.max(face.width, face.height)))
            : words.falloff.face(length(face.width), length(face.height))) +
            ` ${against(point.stopsAt(near) - face.stopsAt(near), length(near))}`,
        ]
      : [words.falloff.rule]),
    ...(fixture === undefined ? [] : [words.falloff.ofFixture(fixture)]),
  ];
}

/** "1.9 to 2.4 m holds within 1/3 stop of the mark." */
export function depthInWords(
  { depth: [near, far] }: Falloff,
  { writing, tolerance }: Surroundings,
): string {
  const within = words.falloff.within(stopsInWords(tolerance));
  const end = said('length', far, writing, lengthFormat(far, writing));
  if (near === 0) return words.falloff.fromFaceTo(end, within);
  const start =
    writing.length === 'ft'
      ? said('length', near, writing)
      : saidNumber('length', near, writing, lengthFormat(near, writing));
  return words.falloff.fromTo(start, end, within);
}

/** Centimetres are as near as anyone stands; nearer than that only by chance. */
export const lengthFormat = (
  value: number,
  { length }: Surroundings['writing'],
): { readonly decimals?: number } => (length === 'm' ? { decimals: value < 10 ? 2 : 1 } : {});

const apart = (stops: number): string =>
  Math.abs(stops) < 0.05
    ? words.falloff.asAt
    : stops > 0
      ? words.falloff.above(stopsInWords(stops))
      : words.falloff.below(stopsInWords(stops));

function against(more: number, where: string): string {
  return Math.abs(more) < 0.05
    ? words.falloff.asSaid
    : more > 0
      ? words.falloff.more(where, stopsInWords(more))
      : words.falloff.less(where, stopsInWords(more));
}
