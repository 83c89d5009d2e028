import { define } from '../define.ts';
import { sunEdge } from './sunEdge.ts';
import {
  date,
  fromEphemeris,
  latitude,
  longitude,
  noEphemeris,
  utcOffset,
} from './sunParameters.ts';

export default define({
  name: 'SUNSET',
  family: 'time',
  summary: 'When the sun sets on a day, on the wall clock.',
  job: 'You plan an exterior and need to know when the light goes.',
  search: ['dusk', 'last light', 'golden hour', 'day length', 'wrap'],
  parameters: [date, latitude, longitude, utcOffset],
  result: 'dateTime',
  alike: ['SUNRISE', 'SUNALTITUDE', 'SUNAZIMUTH', 'SUNLUX'],
  limits:
    'To about a minute at middling latitudes: the upper edge on a level horizon, with the usual refraction. Hills and houses are not reckoned. A polar day or night has none.',
  sources: [{ from: 'sunrise and sunset tables', at: 'upper edge, refraction 34′' }],
  examples: [
    {
      args: ['2026-06-21', 51.51, -0.13, 1],
      result: 46194 + (21 * 60 + 21) / 1440,
      why: 'midsummer in London, summer time: 21:21',
      source: 'sunrise and sunset tables',
      within: 1.5 / 1440,
    },
    {
      args: ['2026-03-20', 0, 0],
      result: 46101 + (18 * 60 + 11) / 1440,
      why: 'at the equinox on the equator: 18:11',
      within: 1.5 / 1440,
    },
  ],
  formula: {
    ...fromEphemeris,
    equation:
      'after noon, where cos H = (sin −50′ − sin latitude · sin δ) / (cos latitude · cos δ), δ the sun’s declination and H its hour angle; 50′ are the refraction and half its width',
  },
  run: noEphemeris('SUNSET'),
  runUnder: (sky, ...place) => sunEdge('SUNSET', sky, ...place),
});
