import { define } from '../define.ts';
import { stopReading } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { highest, lowest } from './extremes.ts';

function run(readings: readonly In<'fNumber'>[]) {
  return 2 * Math.log2(highest(readings) / lowest(readings));
}

export default define({
  name: 'FSPREAD',
  family: 'stops',
  summary: 'How many stops lie between the lowest and the highest of several f-number readings.',
  job: 'You metered a wall, a backdrop or a walk in several places and want to know how uneven it is.',
  search: ['range', 'uneven', 'hot spot', 'highest and lowest', 'brightest', 'darkest'],
  parameters: [
    {
      name: 'readings',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'One reading for each place; a range or several readings.',
      range: true,
      repeats: true,
    },
  ],
  result: 'stops',
  alike: ['SPREAD', 'FAVERAGE', 'FSTOPS'],
  limits:
    'At one speed and time. Only as good as the places metered: the hot spot between them is not seen.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [[2.8, 4, 5.6]], result: 2, why: 'two marks between lowest and highest' },
    { args: ['f/1.4', 'f/1.4+0.4'], result: 0.4, why: 'a canvas four tenths brighter on one side' },
  ],
  laws: {
    'never negative, and nothing for even light': (readings) =>
      run(readings) >= 0 && run(readings.map(() => 4)) === 0,
    'twice every f-number keeps the spread': (readings) =>
      near(run(readings.map((reading) => 2 * reading)), run(readings)),
  },
  formula: '2 * LN(MAX(readings) / MIN(readings)) / LN(2)',
  run,
});
