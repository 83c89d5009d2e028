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
  name: 'SUNALTITUDE',
  family: 'time',
  summary: 'How high the sun stands, in degrees above level.',
  job: 'You plan an exterior and want to know whether the sun clears the roofs by then.',
  search: ['how high', 'elevation', 'golden hour', 'sun path', 'low sun'],
  parameters: [when, latitude, longitude, utcOffset],
  result: 'angle',
  alike: ['SUNAZIMUTH', 'SUNRISE', 'SUNLUX'],
  limits:
    'Within 0.1° from 1900 to 2199, as seen with the usual refraction, which lifts a low sun by half a degree; negative is below the horizon. Hills are not reckoned.',
  sources: [
    {
      from: 'common practice',
      at: 'horizontal coordinates; the ephemeris is named in the third-party notices',
    },
  ],
  examples: [
    {
      args: ['2026-06-21 12:02', 51.48, 0],
      result: 90 - 51.48 + 23.44,
      why: 'midsummer noon at Greenwich: 90 less the latitude and the tilt of the earth’s axis',
      within: 0.05,
    },
    {
      args: ['2026-03-20 14:07', 0, '-30°'],
      result: 90,
      why: 'on the equator at the equinox it stands overhead at noon',
      within: 0.3,
    },
  ],
  formula: {
    ...fromEphemeris,
    equation:
      'arcsin(sin latitude · sin δ + cos latitude · cos δ · cos H) + refraction, δ the sun’s declination and H its hour angle',
  },
  run: noEphemeris('SUNALTITUDE'),
  runUnder: (sky, moment, north, east, offset) =>
    sky.sun(momentOf(moment, aheadAt(sky, moment, offset)), { latitude: north, longitude: east })
      .altitude,
});
