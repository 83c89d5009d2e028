import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import type { AnyDefinition } from '../../../../functions/define.ts';
import SUNALTITUDE from '../../../../functions/time/SUNALTITUDE.ts';
import SUNAZIMUTH from '../../../../functions/time/SUNAZIMUTH.ts';
import SUNLUX from '../../../../functions/time/SUNLUX.ts';
import SUNRISE from '../../../../functions/time/SUNRISE.ts';
import SUNSET from '../../../../functions/time/SUNSET.ts';
import type { Argument } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

const cell = (definition: AnyDefinition, ...args: Argument[]) => call(definition, args, settings);
const number = (definition: AnyDefinition, ...args: Argument[]) =>
  Number(cell(definition, ...args));

/** Minutes after midnight of a date and time. */
const minutes = (when: number) => (when - Math.floor(when)) * 1440;

const rad = Math.PI / 180;

/**
 * Low-precision coordinates of the sun as the Astronomical Almanac prints them (page C5, good to
 * 0.01° from 1950 to 2050), turned to altitude and azimuth, with Bennett’s refraction.
 */
function almanac(when: string, latitude: number, longitude: number) {
  const n = Date.parse(`${when}Z`) / 86_400_000 - 10_957.5;
  const meanLongitude = 280.46 + 0.985_647_4 * n;
  const anomaly = (357.528 + 0.985_600_3 * n) * rad;
  const ecliptic = (meanLongitude + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * rad;
  const tilt = (23.439 - 4e-7 * n) * rad;
  const ascension = Math.atan2(Math.cos(tilt) * Math.sin(ecliptic), Math.cos(ecliptic));
  const declination = Math.asin(Math.sin(tilt) * Math.sin(ecliptic));
  const sidereal = (280.460_618_37 + 360.985_647_366_29 * n) * rad;
  const hour = sidereal + longitude * rad - ascension;
  const north = latitude * rad;
  const height = Math.asin(
    Math.sin(north) * Math.sin(declination) +
      Math.cos(north) * Math.cos(declination) * Math.cos(hour),
  );
  const azimuth = Math.atan2(
    -Math.sin(hour),
    Math.cos(north) * Math.tan(declination) - Math.sin(north) * Math.cos(hour),
  );
  const altitude = height / rad;
  const refraction = 1 / Math.tan((altitude + 7.31 / (altitude + 4.4)) * rad) / 60;
  return { altitude: altitude + refraction, azimuth: (((azimuth / rad) % 360) + 360) % 360 };
}

describe('the sun’s place', () => {
  it.each([
    ['2026-06-21T09:30', 51.5, -0.1],
    ['2026-12-21T12:00', 60.2, 24.9],
    ['2026-03-20T15:45', 40.7, -74],
    ['2031-09-02T03:15', -33.9, 151.2],
    ['2024-02-29T08:00', 1.3, 103.8],
    ['2040-10-11T21:20', 37.8, -122.4],
    ['2019-05-05T05:05', 64.1, 28.2],
  ])('%s at %d, %d: within 0.1° of the almanac’s formula', (when, latitude, longitude) => {
    const { altitude, azimuth } = almanac(when, latitude, longitude);
    const args = [when.replace('T', ' '), latitude, longitude];
    expect(altitude).toBeGreaterThan(0);
    expect(Math.abs(number(SUNALTITUDE, ...args) - altitude)).toBeLessThan(0.1);
    expect(Math.abs(number(SUNAZIMUTH, ...args) - azimuth)).toBeLessThan(0.1);
  });

  it('the wall clock of a zone is ahead by its offset', () => {
    const universal = number(SUNALTITUDE, '2026-08-01 10:00', 48.2, 16.4);
    expect(number(SUNALTITUDE, '2026-08-01 12:00', 48.2, 16.4, 2)).toBeCloseTo(universal, 6);
    expect(number(SUNALTITUDE, '2026-08-01 05:00', 48.2, 16.4, -5)).toBeCloseTo(universal, 6);
  });

  it('in the morning it stands in the east, in the south in the north', () => {
    expect(number(SUNAZIMUTH, '2026-03-20 07:00', 45, 0)).toBeLessThan(120);
    const noonInTheSouth = number(SUNAZIMUTH, '2026-12-21 12:00', -40, 0);
    expect(Math.min(noonInTheSouth, 360 - noonInTheSouth)).toBeLessThan(5);
  });
});

describe('sunrise and sunset (national almanacs; from memory, to two minutes)', () => {
  it.each([
    ['New York', '2024-12-21', 40.71, -74.01, -5, 7 * 60 + 16, 16 * 60 + 32],
    ['Sydney', '2024-12-21', -33.87, 151.21, 11, 5 * 60 + 41, 20 * 60 + 5],
    ['London', '2026-06-21', 51.51, -0.13, 1, 4 * 60 + 43, 21 * 60 + 21],
  ] as const)('%s on %s', (_, date, latitude, longitude, offset, rise, set) => {
    const place = [date, latitude, longitude, offset];
    expect(Math.abs(minutes(number(SUNRISE, ...place)) - rise)).toBeLessThan(2);
    expect(Math.abs(minutes(number(SUNSET, ...place)) - set)).toBeLessThan(2);
  });

  it('both are on the day asked for, whatever the time of day written', () => {
    const day = Math.floor(number(SUNRISE, '2026-05-05', 35, 139, 9));
    expect(Math.floor(number(SUNSET, '2026-05-05 23:59', 35, 139, 9))).toBe(day);
    expect(number(SUNRISE, '2026-05-05 23:59', 35, 139, 9)).toBe(
      number(SUNRISE, '2026-05-05', 35, 139, 9),
    );
  });

  it('the middle of the sun is a quarter of a degree under the horizon when its edge is on it', () => {
    const rise = number(SUNRISE, '2026-04-04', 50, 10);
    // Half the sun’s width is 0.27°; tables take refraction as 0.57°, the ephemeris reckons it.
    expect(Math.abs(number(SUNALTITUDE, rise, 50, 10) + 0.27)).toBeLessThan(0.1);
  });

  it('in a polar day and a polar night there is none, and it says which', () => {
    const tromso = [69.65, 18.96, 1];
    expect(cell(SUNRISE, '2026-06-21', ...tromso)).toEqual({
      code: '#N/A',
      message: 'SUNRISE: the sun does not rise there on that day: polar day.',
    });
    expect(cell(SUNSET, '2026-12-21', ...tromso)).toEqual({
      code: '#N/A',
      message: 'SUNSET: the sun does not set there on that day: polar night.',
    });
  });

  it('without an ephemeris the function says so', () => {
    const { writing, book } = settings;
    expect(call(SUNALTITUDE, ['2026-06-21', 50, 10], { writing, book })).toEqual({
      code: '#N/A',
      message: 'SUNALTITUDE: there is no ephemeris here that knows where the sun stands.',
    });
  });

  it('a time without a date is no moment', () => {
    expect(cell(SUNALTITUDE, '12:00', 50, 10)).toMatchObject({ code: '#NUM!' });
  });
});

describe('daylight (to a stop)', () => {
  it.each([
    // Tables of daylight in encyclopaedias: brightest sun, sunset, end of civil twilight.
    [90, 120_000],
    [0, 400],
    [-6, 3.4],
    // Full sun is EV 15 at ISO 100 (common practice), 2¹⁵ · 250 / 100 lx.
    [45, 81_920],
  ])('%d° gives about %d lx', (altitude, lux) => {
    expect(Math.abs(Math.log2(number(SUNLUX, altitude) / lux))).toBeLessThan(1);
  });

  it('the pieces meet to a tenth of a stop', () => {
    for (const seam of [20, 5, -0.8, -5, -12]) {
      const step = Math.log2(number(SUNLUX, seam) / number(SUNLUX, seam - 1e-9));
      expect(Math.abs(step)).toBeLessThan(0.1);
    }
  });
});
