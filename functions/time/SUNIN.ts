import { define } from '../define.ts';
import { above, between, sampled } from '../domains.ts';
import type { Ephemeris } from '../ephemeris.ts';
import type { In } from '../values.ts';
import { sunIntervals } from './sunIntervals.ts';
import {
  date,
  fromEphemeris,
  latitude,
  longitude,
  noEphemeris,
  utcOffset,
} from './sunParameters.ts';
import { aheadAt, momentOf } from './wallClock.ts';

const name = 'SUNIN';

/** 875 minutes are 14:35; the end of the day is 24:00. */
function clock(minutes: number): string {
  const whole = Math.round(minutes);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${two(Math.floor(whole / 60))}:${two(whole % 60)}`;
}

function runUnder(
  sky: Ephemeris,
  day: In<'dateTime'>,
  bearing: In<'angle'>,
  north: In<'angle'>,
  east: In<'angle'>,
  offset: In<'duration'> | undefined,
  skyline: In<'angle'>,
  sideways: In<'angle'>,
): string {
  // On a day on which the clock is changed, as it stands at noon.
  const midnight = momentOf(Math.floor(day), aheadAt(sky, Math.floor(day) + 0.5, offset));
  const sight = { bearing, skyline, sideways };
  const found = sunIntervals(sky, midnight, { latitude: north, longitude: east }, sight);
  return found.map(({ from, to }) => `${clock(from)} to ${clock(to)}`).join(' and ') || 'no sun';
}

export default define({
  name,
  family: 'time',
  summary: 'From when to when the sun comes in at a window on a day, on the wall clock.',
  job: 'You measured which way a window faces and want to know when the sun is in the room on the day.',
  search: ['window', 'recce', 'sun through a window', 'bearing', 'when does the sun come in'],
  parameters: [
    date,
    {
      name: 'bearing',
      quantity: 'angle',
      domain: between(0, 360),
      help: 'Which way the window faces, looking out: degrees clockwise from true north.',
    },
    latitude,
    longitude,
    utcOffset,
    {
      name: 'skyline',
      quantity: 'angle',
      domain: sampled(between(-5, 89), 0, 30),
      default: 0,
      help: 'How high the roofs, trees or hills opposite reach above level, seen from the window.',
    },
    {
      name: 'sideways',
      quantity: 'angle',
      domain: above(0, 90),
      default: 90,
      help: 'How far aside of straight on the sun still comes in: less than 90 where the wall is thick.',
    },
  ],
  result: 'text',
  alike: ['SUNAZIMUTH', 'SUNALTITUDE', 'SUNBEAMLUX', 'WINDOWLUX'],
  limits:
    'To about a minute for the middle of the sun, in upright windows; a stay of less than six minutes may be missed. A level skyline all along, and no cloud. A compass shows magnetic north, several degrees off in places.',
  sources: [
    { from: 'common practice', at: 'horizontal coordinates of the sun against the window' },
  ],
  examples: [
    {
      args: ['2026-06-21', 0, -33.87, 151.21, 10, 35],
      result: 'no sun',
      why: 'midwinter in Sydney: at noon it stands at 32.7°, under roofs of 35°',
    },
    {
      args: ['2026-03-20', 90, 0, 0],
      result: '06:05 to 12:07',
      why: 'at the equinox on the equator an east window loses it at noon, 7 minutes late by the equation of time',
    },
  ],
  formula: {
    ...fromEphemeris,
    equation:
      'where altitude > skyline and |azimuth − bearing| < sideways, altitude and azimuth as SUNALTITUDE and SUNAZIMUTH give them',
  },
  run: noEphemeris(name),
  runUnder,
});
