import { define } from '../define.ts';
import { light, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(factor: In<'factor'>) {
  return Math.log2(factor);
}

export default define({
  name: 'FACTORSTOPS',
  family: 'stops',
  summary: 'How many stops a light factor, a filter factor or a ratio is.',
  job: 'A filter says 8×, or two sides stand at 4:1, and you think in stops.',
  search: ['filter factor', 'ratio to stops', 'how many stops', 'factor to stops', 'log2'],
  parameters: [
    {
      name: 'factor',
      quantity: 'factor',
      domain: sampled(light, 0.001, 1000),
      help: 'Times the light: 2 is one stop, 0.5 one stop less.',
    },
  ],
  result: 'stops',
  alike: ['STOPFACTOR', 'STOPS', 'CONTRASTRATIO'],
  limits: 'A filter factor says how much more light is needed, so its stops are stops lost.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [8], result: 3, why: 'a filter factor of 8 loses three stops' },
    { args: [0.25], result: -2, why: 'a quarter of the light is two stops less' },
  ],
  laws: {
    'twice the factor is one stop more': (factor) => near(run(2 * factor), run(factor) + 1),
    'the stops give the factor back': (factor) => near(2 ** run(factor), factor),
  },
  formula: 'LN(factor) / LN(2)',
  run,
});
