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
  name: 'SUNRISE',
  family: 'time',
  summary: 'When the sun rises on a day, on the wall clock.',
  job: 'You plan a dawn shot and need to know when the light comes.',
  search: ['dawn', 'first light', 'golden hour', 'day length', 'call time'],
  parameters: [date, latitude, longitude, utcOffset],
  result: 'dateTime',
  alike: ['SUNSET', 'SUNALTITUDE', 'SUNAZIMUTH', 'SUNLUX'],
  limits:
    'To about a minute at middling latitudes: the upper edge on a level horizon, with the usual refraction. Hills and houses are not reckoned. A polar day or night has none.',
  sources: [{ from: 'sunrise and sunset tables', at: 'upper edge, refraction 34′' }],
  examples: [
    {
      args: ['2026-06-21', 51.51, -0.13, 1],
      result: 46194 + (4 * 60 + 43) / 1440,
      why: 'midsummer in London, summer time: 04:43',
      source: 'sunrise and sunset tables',
      within: 1.5 / 1440,
    },
    {
      args: ['2026-03-20', 0, 0],
      result: 46101 + (6 * 60 + 4) / 1440,
      why: 'at the equinox on the equator: 06:04',
      within: 1.5 / 1440,
    },
  ],
  formula: {
    ...fromEphemeris,
    equation:
      'before noon, where cos H = (sin −50′ − sin latitude · sin δ) / (cos latitude · cos δ), δ the sun’s declination and H its hour angle; 50′ are the refraction and half its width',
  },
  run: noEphemeris('SUNRISE'),
  runUnder: (sky, ...place) => sunEdge('SUNRISE', sky, ...place),
});
