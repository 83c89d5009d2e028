import { define } from '../define.ts';
import { positive, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { FunctionError, In } from '../values.ts';

function run(
  distance: In<'length'>,
  factor: In<'factor'>,
  nearest: In<'length'> = 0,
): number | FunctionError {
  const moved = distance / Math.sqrt(factor);
  if (moved >= nearest) return moved;
  return { code: '#NUM!', message: 'nearer than this lamp may stand', quiet: true };
}

export default define({
  name: 'NEWDISTANCE',
  family: 'distance',
  summary: 'Where a small source must stand so that its light is multiplied by a factor.',
  job: 'You know how much more or less light is wanted and would rather move the stand than touch the lamp.',
  search: ['move the lamp', 'back off', 'closer', 'stand', 'how far'],
  parameters: [
    {
      name: 'distance',
      quantity: 'length',
      domain: sampled(positive, 0.1, 100),
      help: 'Source to subject now.',
    },
    {
      name: 'factor',
      quantity: 'factor',
      domain: sampled(positive, 0.01, 100),
      help: 'What its light must be multiplied by.',
    },
    {
      name: 'nearest',
      quantity: 'length',
      domain: sampled(zeroOrMore, 0, 0.05),
      optional: true,
      help: 'Nearest that the lamp may stand, for heat, comfort or the frame.',
    },
  ],
  result: 'length',
  alike: ['DISTANCEFOR', 'INVERSESQUARE', 'LIGHTFACTOR'],
  limits: 'Inverse square law: not for focused beams or a large soft source close by.',
  sources: [{ from: 'CIE S 017', at: 'photometric distance law' }],
  examples: [
    { args: [2, 4], result: 1, why: 'four times the light at half the distance' },
    { args: [3, 1 / 4], result: 6, why: 'a quarter of the light at twice the distance' },
  ],
  laws: {
    'moving back by the inverse factor restores the distance': (distance, factor) => {
      const there = run(distance, factor);
      const back = typeof there === 'number' ? run(there, 1 / factor) : there;
      return typeof back === 'number' && near(back, distance);
    },
  },
  formula: 'distance / SQRT(factor)',
  run,
});
