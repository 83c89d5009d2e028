import { define } from '../define.ts';
import { any, levelOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(level: number, stops: In<'stops'>) {
  return level * 2 ** stops;
}

export default define({
  name: 'LEVELAT',
  family: 'stops',
  summary: 'The level that lies so many stops over (+) or under (−) another.',
  job: 'The plan says "background two stops under the face" and the meter reads lux.',
  search: ['target level', 'stops under', 'stops over', 'what should it read', 'add stops'],
  parameters: [
    {
      name: 'level',
      quantity: 'level',
      domain: levelOrNone,
      help: 'The level that the stops are counted from.',
    },
    { name: 'stops', quantity: 'stops', domain: any, help: 'Over is positive, under negative.' },
  ],
  result: { as: 'level' },
  alike: ['STOPS', 'FNUMBERAT', 'FILLFOR'],
  limits: 'For levels that add as light adds; for f-numbers see FNUMBERAT.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [800, -2], result: 200, why: 'two stops under is a quarter of the light' },
    { args: [100, 1], result: 200, why: 'one stop over is twice the light' },
    { args: [0.18, -3], result: 0.0225, why: 'a tone three stops under a grey of 18 %' },
  ],
  laws: {
    'going back restores the level': (level, stops) => near(run(run(level, stops), -stops), level),
    'one stop more is twice the light': (level, stops) =>
      near(run(level, stops + 1), 2 * run(level, stops)),
  },
  formula: 'level * 2^stops',
  run,
});
