import { describe, expect, it } from 'vitest';
import { call } from '../../functions/call.ts';
import { byName } from '../../functions/index.ts';
import type { Argument } from '../../functions/values.ts';
import { ephemeris } from '../../src/engine/ephemeris.ts';
import { expected } from '../../templates/recce/expected.ts';
import { almanac, seen } from '../accuracy/references/sun.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';
import { settings } from '../unit/functions/support/settings.ts';

// The house is invented; what its cells come to is worked out by hand in templates/recce/expected.ts.
// The sun of every minute: our ephemeris, and apart from it the almanac’s low-precision formula
// (Astronomical Almanac, page C5, from memory).

const the = (name: string, ...given: readonly Argument[]) => {
  const definition = byName.get(name);
  if (!definition) throw new Error(`There is no ${name}`);
  return call(definition, given, { ...settings, ephemeris });
};

interface Window {
  readonly day: number;
  readonly bearing: number;
  readonly latitude: number;
  readonly longitude: number;
  readonly ahead: number;
  readonly skyline: number;
  readonly sideways: number;
}

const window = (
  day: number,
  bearing: number,
  [latitude, longitude, ahead]: readonly [number, number, number],
  skyline = 0,
  sideways = 90,
): Window => ({ day, bearing, latitude, longitude, ahead, skyline, sideways });

const harbour = [55, -1.5, 1] as const;
/** Days of spreadsheets: 46,286 is 21 September 2026. */
const windows: readonly Window[] = [
  window(46_286, 245, harbour, 14, 30),
  window(46_288, 100, harbour, 3),
  window(46_290, 280, harbour, 6, 55),
  window(46_194, 350, harbour, 2),
  window(46_377, 180, [55, -1.5, 0], 5, 60),
  window(46_377, 20, [-33.87, 151.21, 11]),
  window(46_194, 0, [69.65, 18.96, 2]),
  window(46_101, 265, [1.3, 103.8, 8], 2, 45),
  window(46_150, 130, [40.71, -74.01, -4], 20),
  window(46_250, 220, [37.98, 23.73, 3], 0, 75),
];

type Sun = (when: number, of: Window) => { altitude: number; azimuth: number } | undefined;

const ours: Sun = (when, { latitude, longitude, ahead }) =>
  ephemeris.sun(Date.UTC(1899, 11, 30) + when * 86_400_000 - ahead * 3_600_000, {
    latitude,
    longitude,
  });
const printed: Sun = (when, { latitude, longitude, ahead }) => {
  const { altitude, azimuth } = almanac(when - ahead / 24, latitude, longitude);
  const lifted = seen(altitude);
  return lifted === undefined ? undefined : { altitude: lifted, azimuth };
};

/** The minutes of the day in which the sun comes in, each looked at by itself. */
function minutesIn(sun: Sun, of: Window): Set<number> {
  const minutes = Array.from({ length: 1440 }, (_, minute) => minute + 0.5);
  return new Set(
    minutes.filter((minute) => {
      const stands = sun(of.day + minute / 1440, of);
      if (!stands || stands.altitude <= of.skyline) return false;
      const apart = Math.abs(stands.azimuth - of.bearing);
      return Math.min(apart, 360 - apart) < of.sideways;
    }),
  );
}

/** The minutes that the words name. */
function minutesSaid(text: string): Set<number> {
  const spans = [...text.matchAll(/(\d\d):(\d\d) to (\d\d):(\d\d)/g)].map((found) =>
    found.slice(1).map(Number),
  );
  return new Set(
    spans.flatMap(([h1 = 0, m1 = 0, h2 = 0, m2 = 0]) => {
      const [from, to] = [60 * h1 + m1, 60 * h2 + m2];
      return Array.from({ length: to - from }, (_, index) => from + index + 0.5);
    }),
  );
}

const apart = (one: Set<number>, other: Set<number>): number =>
  [...one].filter((minute) => !other.has(minute)).length +
  [...other].filter((minute) => !one.has(minute)).length;

describe('the sun in ten windows on ten days, minute by minute', () => {
  it.each(windows)('day $day, facing $bearing° at $latitude°, $longitude°', (of) => {
    const { day, bearing, latitude, longitude, ahead, skyline, sideways } = of;
    const text = String(the('SUNIN', day, bearing, latitude, longitude, ahead, skyline, sideways));
    const said = minutesSaid(text);
    const edges = 2 * (text.match(/ to /g)?.length ?? 0);
    expect(edges).toBeGreaterThan(0);
    // An edge is said to the nearest minute.
    expect(apart(said, minutesIn(ours, of))).toBeLessThanOrEqual(edges);
    // The printed formula is good to 0.1°, which at a grazing skyline takes minutes.
    expect(apart(said, minutesIn(printed, of))).toBeLessThanOrEqual(2 * edges);
  });
});

describe('light of sky and sun (IES RP-21) against sun and sky together (US Naval Observatory)', () => {
  it.each([10, 20, 30, 40, 50, 60, 70])('at %d° they agree to half a stop', (altitude) => {
    const level =
      Number(the('SKYLUX', altitude)) +
      Number(the('SUNBEAMLUX', altitude)) * Math.sin((altitude * Math.PI) / 180);
    expect(Math.abs(Math.log2(level / Number(the('SUNLUX', altitude))))).toBeLessThan(0.5);
  });

  it('overcast noon in winter and summer lies between what handbooks print: 5,000 and 20,000 lx', () => {
    // Common practice: an overcast day gives from 5,000 to 20,000 lx.
    for (const altitude of [15, 60]) {
      const lux = Number(the('SKYLUX', altitude, 1));
      expect(lux).toBeGreaterThan(5_000);
      expect(lux).toBeLessThan(20_000);
    }
  });
});

describe('daylight through a window, summed up patch by patch', () => {
  it.each([
    [10_000, 1.2, 1.6, 3, 0.5, -0.5, 0.8, 0.2],
    [12_000, 2.4, 1, 2.5, 0, -1.3, 0.8, 0.1],
    [8_000, 3, 2.8, 4, 0, 0.2, 1, 0.3],
    [8_000, 0.6, 0.8, 1.5, 1, 0.6, 0.6, 0.2],
  ] as const)('%d lx through %d by %d m from %d m', (...given) => {
    const [sky, width, height, distance, across, up, glass, ground] = given;
    const parts = 400;
    let lux = 0;
    for (let column = 0; column < parts; column += 1)
      for (let row = 0; row < parts; row += 1) {
        const x = ((column + 0.5) / parts - 0.5) * width - across;
        const y = ((row + 0.5) / parts - 0.5) * height - up;
        const luminance = (sky / Math.PI) * glass * (y > 0 ? 1 : ground);
        // L · cos² / r² · dA, both faces square to the axis.
        lux += (luminance * distance ** 2) / (x ** 2 + y ** 2 + distance ** 2) ** 2;
      }
    lux *= (width / parts) * (height / parts);
    expect(Number(the('WINDOWLUX', ...given)) / lux).toBeCloseTo(1, 2);
  });
});

describe('the sheet, filled for three places', () => {
  const sheet = openFilled('recce');
  comesToWhatItSays(sheet, expected);

  it('a window of a place that is not listed says so', () => {
    const open = openFilled('recce');
    open.type('B10', 'Quay');
    expect(open.valueOf('C10')).toBe('no such place');
  });

  it('a house that draws more than its breaker may give says by how much', () => {
    const { type, valueOf } = openFilled('recce');
    type('F20', '3 kW');
    expect(valueOf('C20')).toBe('1.6 A too much on the blue circuit already');
  });

  it('with the place overcast no window has sun on its mark', () => {
    const { type, valueOf } = openFilled('recce');
    type('H4', 'overcast');
    expect(valueOf('O11')).toBe(0);
  });
});
