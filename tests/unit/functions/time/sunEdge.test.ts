import { describe, expect, it } from 'vitest';
import type { Ephemeris } from '../../../../functions/ephemeris.ts';
import { sunEdge } from '../../../../functions/time/sunEdge.ts';

const hour = 3_600_000;
/** 21 June 2026, at midnight in a clock two hours ahead. */
const date = 46_194;
const midnight = Date.UTC(2026, 5, 20, 22);

/** A sun that stands where the test wants it, at midnight, six, noon and eighteen o’clock. */
function sky(rises: number | undefined, ...heights: readonly number[]): Ephemeris {
  return {
    sun: (moment) => {
      const altitude = heights[(moment - midnight) / (6 * hour)];
      if (altitude === undefined) throw new Error('Nobody needs to look at this hour.');
      return { altitude, azimuth: 0 };
    },
    sunrise: (moment) => (moment === midnight ? rises : Number.NaN),
    sunset: (moment) => (moment === midnight ? rises : Number.NaN),
    ahead: () => 2,
  };
}

const rises = (...given: Parameters<typeof sky>) =>
  sunEdge('SUNRISE', sky(...given), date + 0.6, 70, 25, 2);
const not = (verb: 'rise' | 'set', why: string) => ({
  code: '#N/A',
  message: `${verb === 'rise' ? 'SUNRISE' : 'SUNSET'}: the sun does not ${verb} there on that day${why}.`,
});

describe('the edge of a day, whatever hour is written with the date', () => {
  it('is the one of that day of the clock', () => {
    expect(rises(midnight + 6 * hour, 0, 0, 0, 0)).toBeCloseTo(date + 0.25, 9);
    expect(rises(midnight + 24 * hour - 1, 0, 0, 0, 0)).toBeCloseTo(date + 1, 6);
  });

  it('is not the one of the next day', () => {
    expect(rises(midnight + 24 * hour, -1, 1, 1, 1)).toEqual(not('rise', ''));
  });
});

describe('a day without an edge', () => {
  it('is a polar day where the sun is always up, a polar night where it never is', () => {
    expect(rises(undefined, 1, 5, 40, 5)).toEqual(not('rise', ': polar day'));
    expect(rises(undefined, -40, -5, -1, -5)).toEqual(not('rise', ': polar night'));
    const set = sunEdge('SUNSET', sky(undefined, 1, 5, 40, 5), date, 70, 25, 2);
    expect(set).toEqual(not('set', ': polar day'));
  });

  it('is neither where the sun is up at some hours and down at others, or on the horizon', () => {
    expect(rises(undefined, -1, 5, 40, 5)).toEqual(not('rise', ''));
    expect(rises(undefined, 0, 5, 40, 5)).toEqual(not('rise', ''));
    expect(rises(undefined, -40, -5, 0, -5)).toEqual(not('rise', ''));
  });
});
