import { define } from '../define.ts';
import {
  fromEphemeris,
  latitude,
  longitude,
  noEphemeris,
  utcOffset,
  when,
} from './sunParameters.ts';
import { aheadAt, momentOf } from './wallClock.ts';

export default define({
  name: 'SUNAZIMUTH',
  family: 'time',
  summary: 'Where the sun stands round the horizon, in degrees clockwise from true north.',
  job: 'You plan an exterior and want to know which wall the sun is on by then.',
  search: ['direction', 'bearing', 'compass', 'where is the sun', 'which way', 'sun path'],
  parameters: [when, latitude, longitude, utcOffset],
  result: 'angle',
  alike: ['SUNALTITUDE', 'SUNRISE', 'SUNSET'],
  limits:
    'Within 0.1° from 1900 to 2199, wider where the sun is nearly overhead. From true north: a compass shows magnetic north, several degrees off in places.',
  sources: [
    {
      from: 'common practice',
      at: 'horizontal coordinates; the ephemeris is named in the third-party notices',
    },
  ],
  examples: [
    {
      args: ['2026-06-21 12:02', 51.48, 0],
      result: 180,
      why: 'at noon it stands in the south',
      within: 0.5,
    },
    {
      args: ['2026-03-20 18:00', 45, 0],
      result: 270,
      why: 'at the equinox it goes down in the west',
      within: 2,
    },
  ],
  formula: {
    ...fromEphemeris,
    equation:
      'atan2(−cos δ · sin H, sin δ · cos latitude − cos δ · cos H · sin latitude), δ the sun’s declination and H its hour angle',
  },
  run: noEphemeris('SUNAZIMUTH'),
  runUnder: (sky, moment, north, east, offset) =>
    sky.sun(momentOf(moment, aheadAt(sky, moment, offset)), { latitude: north, longitude: east })
      .azimuth,
});
