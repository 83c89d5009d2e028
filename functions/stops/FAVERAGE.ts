import { define } from '../define.ts';
import { stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(readings: readonly In<'fNumber'>[]) {
  const light = readings.reduce((sum, reading) => sum + reading ** 2, 0);
  return Math.sqrt(light / readings.length);
}

export default define({
  name: 'FAVERAGE',
  family: 'stops',
  summary: 'The f-number of the average light of several readings.',
  job: 'You metered a wall or a backdrop in several places and want its average.',
  search: ['mean', 'average reading', 'several points', 'backdrop', 'overall'],
  parameters: [
    {
      name: 'readings',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'One reading for each place; a range or several readings.',
      range: true,
      repeats: true,
    },
  ],
  result: 'fNumber',
  alike: ['FSPREAD', 'FCOMBINE', 'EVENNESS'],
  limits: 'The average in light, not of the numbers: f/2 and f/4 average to f/3.2, not f/3.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [[2, 4]], result: Math.sqrt(10), why: '4 and 16 parts of light average to 10' },
    { args: ['f/8', 'f/8'], result: 8, why: 'even light is its own average' },
  ],
  laws: {
    'between the lowest and the highest reading': (readings) =>
      run(readings) >= Math.min(...readings) * (1 - 1e-12) &&
      run(readings) <= Math.max(...readings) * (1 + 1e-12),
    'counting every reading twice changes nothing': (readings) =>
      near(run([...readings, ...readings]), run(readings)),
  },
  formula: 'SQRT(SUMSQ(readings) / COUNT(readings))',
  run,
});
