import { define } from '../define.ts';
import { near } from '../near.ts';
import { meteredParameters, readingParameter } from './meteredParameters.ts';
import { readingAsLux } from './readings.ts';

export default define({
  name: 'READINGLUX',
  family: 'exposure',
  summary: 'The illuminance behind an incident reading of any kind at this speed and time.',
  job: 'You want to add or take away lights, which only works in lux, and the readings are in f-numbers.',
  search: ['f-number to lux', 'convert reading', 'add lights', 'walk'],
  parameters: [readingParameter, ...meteredParameters],
  result: 'illuminance',
  alike: ['READINGF', 'INCIDENTLUX', 'WITHOUT'],
  limits: 'Incident readings only: what a spot meter sees depends on the surface.',
  sources: [{ from: 'ISO 2720', at: 'exposure equation for incident light' }],
  examples: [
    { args: ['f/8', 'dome', 64, 1], result: 340, why: 'E = 340 · 64 / 64' },
    { args: ['85 lx', 'flat', 800, '1/50 s'], result: 85, why: 'lux stay lux' },
  ],
  laws: {
    'one stop more is twice the light': (reading, _meter, iso, time, dome, flat, spot) => {
      const metered = { meter: 'dome', iso, time, dome, flat, spot };
      const once = readingAsLux({ measured: 'fNumber', value: reading.value }, metered);
      const more = readingAsLux(
        { measured: 'fNumber', value: reading.value * Math.SQRT2 },
        metered,
      );
      return typeof once === 'number' && typeof more === 'number' && near(more / once, 2);
    },
  },
  formula: {
    none: 'The equation depends on what the reading measures: as read, or C · N² / (S · t).',
    equation: 'E = C · N² / (S · t)',
  },
  run: (reading, meter, iso, time, dome, flat, spot) =>
    readingAsLux(reading, { meter, iso, time, dome, flat, spot }),
});
