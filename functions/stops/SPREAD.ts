import { define } from '../define.ts';
import { lightLevel } from '../domains.ts';
import { near } from '../near.ts';
import { highest, lowest } from './extremes.ts';

function run(levels: readonly number[]) {
  return Math.log2(highest(levels) / lowest(levels));
}

export default define({
  name: 'SPREAD',
  family: 'stops',
  summary: 'How many stops lie between the lowest and the highest of several levels.',
  job: 'You metered a wall, a backdrop or a walk in several places and want to know how uneven it is.',
  search: ['range', 'uneven', 'hot spot', 'highest and lowest', 'brightest', 'darkest'],
  parameters: [
    {
      name: 'levels',
      quantity: 'level',
      domain: lightLevel,
      help: 'One reading for each place, all in one unit; a range or several readings.',
      range: true,
      repeats: true,
    },
  ],
  result: 'stops',
  alike: ['FSPREAD', 'EVENNESS', 'STOPS'],
  limits: 'Only as good as the places metered: the hot spot between them is not seen.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [[100, 200, 400]], result: 2, why: 'highest four times the lowest' },
    { args: ['20 fc', '40 fc'], result: 1, why: 'twice the light is one stop' },
  ],
  laws: {
    'never negative, and nothing for even light': (levels) =>
      run(levels) >= 0 && run(levels.map(() => 1)) === 0,
    'dimming all alike keeps the spread': (levels) =>
      near(run(levels.map((level) => level / 2)), run(levels)),
  },
  formula: 'LN(MAX(levels) / MIN(levels)) / LN(2)',
  run,
});
