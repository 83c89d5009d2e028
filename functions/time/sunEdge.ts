import type { Ephemeris } from '../ephemeris.ts';
import { refuse, type FunctionError, type In } from '../values.ts';
import { aheadAt, clockAt, momentOf } from './wallClock.ts';

const day = 86_400_000;

/** When the sun rises or sets on a day of the wall clock, or the sentence of a polar day or night. */
export function sunEdge(
  name: 'SUNRISE' | 'SUNSET',
  sky: Ephemeris,
  date: In<'dateTime'>,
  latitude: In<'angle'>,
  longitude: In<'angle'>,
  utcOffset: In<'duration'> | undefined,
): In<'dateTime'> | FunctionError {
  const place = { latitude, longitude };
  const midnight = momentOf(Math.floor(date), aheadAt(sky, Math.floor(date), utcOffset));
  const edge = name === 'SUNRISE' ? sky.sunrise : sky.sunset;
  const found = edge(midnight, place);
  if (found !== undefined && found < midnight + day) return clockAt(sky, found, utcOffset);
  const heights = [0, 6, 12, 18].map(
    (hour) => sky.sun(midnight + hour * 3_600_000, place).altitude,
  );
  const verb = name === 'SUNRISE' ? 'rise' : 'set';
  return refuse(`${name}: the sun does not ${verb} there on that day${because(heights)}.`, '#N/A');
}

function because(heights: readonly number[]): string {
  if (heights.every((height) => height > 0)) return ': polar day';
  return heights.every((height) => height < 0) ? ': polar night' : '';
}
