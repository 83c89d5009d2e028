import { define } from '../define.ts';
import { stopReading } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(bare: In<'fNumber'>, diffused: In<'fNumber'>): In<'stops'> {
  return 2 * Math.log2(bare / diffused);
}

export default define({
  name: 'FDIFFUSIONLOSS',
  family: 'filter',
  summary: 'Stops lost in a diffusion, gel or scrim, from f-numbers read without and with it.',
  job: 'You metered a lamp in f-numbers bare and through the frame and want to write down what the frame eats.',
  search: ['diffusion', 'scrim', 'gel', 'silk', 'how much does it eat', 'frame'],
  parameters: [
    {
      name: 'without',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'f-number read without it.',
    },
    {
      name: 'with',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'f-number read with it, all else the same.',
    },
  ],
  result: 'stops',
  alike: ['DIFFUSIONLOSS', 'FSTOPS', 'FILTERSTACK'],
  limits:
    'Holds for that lamp, beam and distance: diffusion spreads a narrow beam more than a wide one.',
  sources: [{ from: 'common practice' }, { from: 'ISO 517', at: 'marks stand for exact values' }],
  examples: [
    { args: [8, 5.6], result: 1, why: 'from f/8 to f/5.6 is one stop' },
    { args: ['f/4', 'f/3.2'], result: 2 / 3, why: 'two marks of the third-stop scale' },
  ],
  laws: {
    'a stop less through it is a stop more lost': (bare, diffused) =>
      near(run(bare, diffused / Math.SQRT2), run(bare, diffused) + 1),
  },
  formula: '2 * LN(without / with) / LN(2)',
  run,
});
