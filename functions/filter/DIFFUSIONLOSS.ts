import { define } from '../define.ts';
import { lightLevel } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(bare: In<'level'>, diffused: In<'level'>): In<'stops'> {
  return Math.log2(bare / diffused);
}

export default define({
  name: 'DIFFUSIONLOSS',
  family: 'filter',
  summary: 'Stops lost in a diffusion, gel or scrim, from readings without and with it.',
  job: 'You metered a lamp bare and through the frame and want to write down what the frame eats.',
  search: ['diffusion', 'scrim', 'gel', 'silk', 'how much does it eat', 'frame'],
  parameters: [
    { name: 'without', quantity: 'level', domain: lightLevel, help: 'Reading without it.' },
    {
      name: 'with',
      quantity: 'level',
      domain: lightLevel,
      help: 'Reading with it, all else the same.',
    },
  ],
  result: 'stops',
  alike: ['FDIFFUSIONLOSS', 'TRANSMISSIONSTOPS', 'FILTERSTACK', 'STOPS'],
  limits:
    'Holds for that lamp, beam and distance: diffusion spreads a narrow beam more than a wide one.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [800, 200], result: 2, why: 'a quarter comes through' },
    { args: ['100 fc', '50 fc'], result: 1, why: 'half comes through' },
  ],
  laws: {
    'half of what came through is one stop more': (bare, diffused) =>
      near(run(bare, diffused / 2), run(bare, diffused) + 1),
  },
  formula: 'LN(without / with) / LN(2)',
  run,
});
