import { define } from '../define.ts';
import { near } from '../near.ts';
import { meteredParameters, readingParameter } from './meteredParameters.ts';
import { readingAsFNumber } from './readings.ts';

export default define({
  name: 'READINGF',
  family: 'exposure',
  summary: 'The f-number that a reading of any kind means at this speed and time.',
  job: 'Your walk has readings in f-numbers, lux and candela per square metre, and you want to hold them against each other.',
  search: ['mixed readings', 'convert reading', 'lux to f-number', 'walk'],
  parameters: [readingParameter, ...meteredParameters],
  result: 'fNumber',
  alike: ['READINGLUX', 'INCIDENTF', 'SPOTF', 'FSTOPS'],
  limits:
    'A reading in f-numbers is taken as read, whatever the receptor: between dome and flat up to 0.44 stop is the meter.',
  sources: [{ from: 'ISO 2720', at: 'exposure equations for incident and reflected light' }],
  examples: [
    { args: ['250 lx', 'flat', 100, 1], result: 10, why: 'N² = E · S · t / C = 250 · 100 / 250' },
    {
      args: ['340 lx', 'dome', 100, 1],
      result: 10,
      why: 'the dome’s own constant gives the same stop',
    },
    {
      args: ['f/2.8', 'dome', 800, '1/50 s'],
      result: 2 ** 1.5,
      why: 'an f-number stays what it is',
    },
    { args: ['12.5 cd/m2', 'spot', 100, 1], result: 10, why: 'N² = L · S · t / K' },
  ],
  laws: {
    'an f-number is taken as read': (reading, meter, iso, time, dome, flat, spot) =>
      reading.measured !== 'fNumber' ||
      readingAsFNumber(reading, { meter, iso, time, dome, flat, spot }) === reading.value,
    'four times the light is two stops': (reading, _meter, iso, time, dome, flat, spot) => {
      const metered = { meter: 'flat', iso, time, dome, flat, spot };
      const lux = { measured: 'illuminance', value: reading.value } as const;
      const once = readingAsFNumber(lux, metered);
      const fourfold = readingAsFNumber({ ...lux, value: 4 * lux.value }, metered);
      return typeof once === 'number' && typeof fourfold === 'number' && near(fourfold, 2 * once);
    },
  },
  formula: {
    none: 'The equation depends on what the reading measures: as read, √(E · S · t / C) or √(L · S · t / K).',
    equation: 'N² = E · S · t / C = L · S · t / K',
  },
  run: (reading, meter, iso, time, dome, flat, spot) =>
    readingAsFNumber(reading, { meter, iso, time, dome, flat, spot }),
});
