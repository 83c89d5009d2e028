import { define } from '../define.ts';
import { stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(readings: readonly In<'fNumber'>[]) {
  return Math.sqrt(readings.reduce((sum, reading) => sum + reading ** 2, 0));
}

export default define({
  name: 'FCOMBINE',
  family: 'stops',
  summary: 'The f-number that several lights give together, from their single readings.',
  job: 'You metered each lamp alone on the same spot and want to know what all of them give.',
  search: ['add lights', 'together', 'sum', 'all lamps on', 'combine', 'total'],
  parameters: [
    {
      name: 'readings',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'Each light alone, meter in one place; a range or several readings.',
      range: true,
      repeats: true,
    },
  ],
  result: 'fNumber',
  alike: ['FWITHOUT', 'FAVERAGE', 'FKEYFILLRATIO'],
  limits:
    'Light adds, f-numbers do not: the squares add. All readings at one speed and time, the meter pointed alike.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [[8, 8]], result: 2 ** 3.5, why: 'two lamps of f/8 give f/11, one stop more' },
    { args: ['f/5.6', 'f/4'], result: Math.sqrt(48), why: '32 and 16 parts of light' },
    { args: [[4, null, 4]], result: 2 ** 2.5, why: 'an empty cell is skipped' },
  ],
  laws: {
    'a light that gives nothing changes nothing': (readings) =>
      near(run([...readings, 0]), run(readings)),
    'the same again is one stop more': (readings) =>
      near(run([...readings, ...readings]), run(readings) * Math.SQRT2),
  },
  formula: 'SQRT(SUMSQ(readings))',
  run,
});
