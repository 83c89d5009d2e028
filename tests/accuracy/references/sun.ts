import type { Chance, References } from '../measure.ts';

const rad = Math.PI / 180;

/**
 * Low-precision coordinates of the sun as the Astronomical Almanac prints them (page C5, good to
 * 0.01° from 1950 to 2050; from memory), turned to altitude and azimuth, without refraction.
 * `when` is a spreadsheet’s date and time, universal.
 */
export function almanac(when: number, latitude: number, longitude: number) {
  // Day 36 526.5 of spreadsheets is noon of 1 January 2000.
  const n = when - 36_526.5;
  const meanLongitude = 280.46 + 0.985_647_4 * n;
  const anomaly = (357.528 + 0.985_600_3 * n) * rad;
  const ecliptic = (meanLongitude + 1.915 * Math.sin(anomaly) + 0.02 * Math.sin(2 * anomaly)) * rad;
  const tilt = (23.439 - 4e-7 * n) * rad;
  const ascension = Math.atan2(Math.cos(tilt) * Math.sin(ecliptic), Math.cos(ecliptic));
  const declination = Math.asin(Math.sin(tilt) * Math.sin(ecliptic));
  const hour = (280.460_618_37 + 360.985_647_366_29 * n + longitude) * rad - ascension;
  const north = latitude * rad;
  const height =
    Math.sin(north) * Math.sin(declination) +
    Math.cos(north) * Math.cos(declination) * Math.cos(hour);
  const azimuth = Math.atan2(
    -Math.sin(hour) * Math.cos(declination),
    Math.cos(north) * Math.sin(declination) -
      Math.sin(north) * Math.cos(declination) * Math.cos(hour),
  );
  return { altitude: Math.asin(height) / rad, azimuth: (((azimuth / rad) % 360) + 360) % 360 };
}

/** Sæmundsson’s refraction, from memory; by day only, since below the horizon nobody sees the sun. */
export function seen(altitude: number): number | undefined {
  if (altitude < 0) return undefined;
  return altitude + 1.02 / Math.tan((altitude + 10.3 / (altitude + 5.11)) * rad) / 60;
}

type When = readonly [number, number, number, number];

/** A moment from 1990 to 2049, between the polar circles and a little beyond. */
const sample = (chance: Chance) => [
  32_874 + 21_915 * chance(),
  140 * (chance() - 0.5),
  360 * (chance() - 0.5),
  Math.round(24 * (chance() - 0.5)),
];

const place = ([when, latitude, longitude, offset]: When) =>
  almanac(when - offset / 24, latitude, longitude);

/** Rises and sets every day there; a flat path at the horizon turns minutes into much. */
const middling = (chance: Chance) => {
  const [when = 0, latitude = 0, ...rest] = sample(chance);
  return [Math.floor(when), (latitude * 60) / 70, ...rest];
};

/** When the sun’s upper edge crosses the horizon (−0.833° for its middle), by stepping and halving. */
function crossing([date, latitude, longitude, offset]: When, rising: boolean): number | undefined {
  const above = (when: number) =>
    almanac(when - offset / 24, latitude, longitude).altitude > -0.833;
  const step = 1 / 288;
  for (let when = date; when < date + 1; when += step) {
    if (above(when) === rising || above(when + step) !== rising) continue;
    let [before, after] = [when, when + step];
    while (after - before > 1e-7) {
      const middle = (before + after) / 2;
      if (above(middle) === rising) after = middle;
      else before = middle;
    }
    return before;
  }
  return undefined;
}

const angles = { against: 'the almanac’s formula', unit: '°', limit: 0.1, sample };
const minutes = {
  against: 'the almanac’s formula, stepped through the day to 60° of latitude',
  unit: 'min',
  limit: 1.5,
  oneIn: 5,
  sample: middling,
  off: (ours: number, theirs: number) => 1440 * Math.abs(ours - theirs),
};

export const sun: References = {
  SUNALTITUDE: { ...angles, work: (when: When) => seen(place(when).altitude) },
  SUNAZIMUTH: {
    ...angles,
    work: (when: When) => {
      const { altitude, azimuth } = place(when);
      return altitude < 0 ? undefined : azimuth;
    },
    // An angle on the sky: overhead, a whole turn of azimuth is nothing.
    off: (ours, theirs, handed: When) => {
      const turn = Math.abs(ours - theirs) % 360;
      return Math.min(turn, 360 - turn) * Math.cos(place(handed).altitude * rad);
    },
  },
  SUNRISE: { ...minutes, work: (day: When) => crossing(day, true) },
  SUNSET: { ...minutes, work: (day: When) => crossing(day, false) },
};
