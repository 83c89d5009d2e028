import { define } from '../define.ts';
import { levelOrNone } from '../domains.ts';
import { near } from '../near.ts';
import { isError, noLight, type FunctionError } from '../values.ts';
import { lowest } from './extremes.ts';

function run(levels: readonly number[]): number | FunctionError {
  const mean = levels.reduce((sum, level) => sum + level / levels.length, 0);
  return mean === 0 ? noLight('levels') : lowest(levels) / mean;
}

export default define({
  name: 'EVENNESS',
  family: 'stops',
  summary: 'The lowest of several levels over their mean: 1 is perfectly even.',
  job: 'You lit a screen, a backdrop or a floor and want one figure for how even it is.',
  search: ['uniformity', 'even', 'green screen', 'backdrop', 'flat light', 'cyclorama'],
  parameters: [
    {
      name: 'levels',
      quantity: 'level',
      domain: levelOrNone,
      help: 'One reading for each place, all in one unit; a range or several readings.',
      range: true,
      repeats: true,
    },
  ],
  result: 'ratio',
  alike: ['SPREAD', 'FAVERAGE'],
  limits: 'Needs a regular grid of places to mean much; SPREAD says the same in stops.',
  sources: [{ from: 'CIE S 017', at: 'illuminance uniformity' }],
  examples: [
    { args: [[80, 100, 120]], result: 0.8, why: 'lowest 80 under a mean of 100' },
    { args: ['50 fc', '50 fc'], result: 1, why: 'alike everywhere' },
  ],
  laws: {
    'never more than one': (levels) => {
      const evenness = run(levels);
      return isError(evenness) || (evenness >= 0 && evenness <= 1 + 1e-12);
    },
    'dimming all alike keeps it': (levels) => {
      const [full, half] = [run(levels), run(levels.map((level) => level / 2))];
      return isError(full) || isError(half) || near(full, half);
    },
  },
  formula: 'MIN(levels) / (SUM(levels) / COUNT(levels))',
  run,
});
