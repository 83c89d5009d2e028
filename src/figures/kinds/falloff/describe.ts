import { stopsInWords } from '../../../../functions/stops/verdictWords.ts';
import type { Surroundings } from '../../figure.ts';
import { said, saidNumber } from '../../kit/words.ts';
import type { Falloff } from './read.ts';

export function describeFalloff(falloff: Falloff, surroundings: Surroundings): readonly string[] {
  const { lux, mark, point, face, shown } = falloff;
  const { writing } = surroundings;
  const length = (value: number) => said('length', value, writing, lengthFormat(value, writing));
  const curve = face ?? point;
  const [near, far] = shown;
  const ends = `From ${length(near)} away it is ${apart(curve.stopsAt(near))} the mark, from ${length(far)} ${apart(curve.stopsAt(far))} it.`;
  return [
    depthInWords(falloff, surroundings),
    `At the mark, ${said('length', mark, writing)} away, it gives ${said('illuminance', lux, writing)}.`,
    ends,
    ...(face
      ? [
          `The face is ${length(face.width)} by ${length(face.height)}. ${against(point.stopsAt(near) - face.stopsAt(near), length(near))}`,
        ]
      : ['By the inverse square law: right from five times the widest side of the source on.']),
  ];
}

/** "1.9 to 2.4 m holds within 1/3 stop of the mark." */
export function depthInWords(
  { depth: [near, far] }: Falloff,
  { writing, tolerance }: Surroundings,
): string {
  const within = `within ${stopsInWords(tolerance)} of the mark`;
  const end = said('length', far, writing, lengthFormat(far, writing));
  if (near === 0) return `From the face to ${end} the light stays ${within}.`;
  const start =
    writing.length === 'ft'
      ? said('length', near, writing)
      : saidNumber('length', near, writing, lengthFormat(near, writing));
  return `From ${start} to ${end} the light stays ${within}.`;
}

/** Centimetres are as near as anyone stands; nearer than that only by chance. */
export const lengthFormat = (
  value: number,
  { length }: Surroundings['writing'],
): { readonly decimals?: number } => (length === 'm' ? { decimals: value < 10 ? 2 : 1 } : {});

const apart = (stops: number): string =>
  Math.abs(stops) < 0.05 ? 'as at' : `${stopsInWords(stops)} ${stops > 0 ? 'above' : 'below'}`;

function against(more: number, where: string): string {
  return Math.abs(more) < 0.05
    ? `It falls off as the inverse square says.`
    : `From ${where} the inverse square would promise ${stopsInWords(more)} ${more > 0 ? 'more' : 'less'}.`;
}
