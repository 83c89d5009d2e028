import { define } from '../define.ts';
import { positive, sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(lux: In<'illuminance'>, distance: In<'length'>, newDistance: In<'length'>) {
  return lux * (distance / newDistance) ** 2;
}

export default define({
  name: 'INVERSESQUARE',
  family: 'distance',
  summary: 'Illuminance after a small source is moved nearer or farther.',
  job: 'You know what the lamp gives where it stands and want to know what it gives from over there.',
  search: ['move the lamp', 'further away', 'closer', 'falloff', 'back off'],
  parameters: [
    {
      name: 'lux',
      quantity: 'illuminance',
      domain: zeroOrMore,
      help: 'Reading taken facing the source.',
    },
    {
      name: 'distance',
      quantity: 'length',
      domain: sampled(positive, 0.1, 100),
      help: 'Source to meter at that reading.',
    },
    {
      name: 'new_distance',
      quantity: 'length',
      domain: sampled(positive, 0.1, 100),
      help: 'Source to subject now.',
    },
  ],
  result: 'illuminance',
  alike: ['DISTANCEFOR', 'FALLOFF', 'PANELLUX'],
  limits:
    'Within 1 % from five times the source’s widest dimension. Not for focused beams or a large soft source close by: see PANELLUX.',
  sources: [{ from: 'CIE S 017', at: 'photometric distance law' }],
  examples: [
    { args: [800, 2, 4], result: 200, why: 'twice as far, a quarter of the light' },
    {
      args: ['100 fc', '10 ft', '5 ft'],
      result: 400 / 0.3048 ** 2,
      why: 'half as far, four times the light',
    },
  ],
  laws: {
    'walking back restores the reading': (lux, distance, newDistance) =>
      near(run(run(lux, distance, newDistance), newDistance, distance), lux),
    'twice the light stays twice the light': (lux, distance, newDistance) =>
      near(run(2 * lux, distance, newDistance), 2 * run(lux, distance, newDistance)),
  },
  formula: 'lux * (distance / new_distance)^2',
  run,
});
