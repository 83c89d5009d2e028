import { define } from '../define.ts';
import { coneAngle, onSet } from '../domains.ts';
import { near } from '../near.ts';
import { radians } from './degrees.ts';
import type { In } from '../values.ts';

function run(distance: In<'length'>, angle: In<'angle'>) {
  return 2 * distance * Math.tan(radians(angle) / 2);
}

export default define({
  name: 'BEAMDIAMETER',
  family: 'distance',
  summary: 'How wide a beam is at a distance, straight on.',
  job: 'You want to know whether the beam covers the subject from where the lamp stands.',
  search: ['spread', 'how wide', 'cover', 'spot size', 'pool of light'],
  parameters: [
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'Source to the surface, along the beam.',
    },
    {
      name: 'angle',
      quantity: 'angle',
      domain: coneAngle,
      help: 'Whole angle of the beam, edge to edge.',
    },
  ],
  result: 'length',
  alike: ['BEAMANGLE', 'BEAMDISTANCE', 'SOURCESIZE'],
  limits:
    'Straight on to the surface; at a slant the pool is an ellipse and longer. Which edge is meant (half or a tenth of the middle) is the data sheet’s choice.',
  sources: [{ from: 'common practice', at: 'geometry of a cone' }],
  examples: [
    { args: [5, 90], result: 10, why: 'at 90° the beam is twice as wide as it is long' },
    { args: [3, '60°'], result: 6 / Math.sqrt(3), why: 'tan 30° is 1/√3' },
  ],
  laws: {
    'twice as far, twice as wide': (distance, angle) =>
      near(run(2 * distance, angle), 2 * run(distance, angle)),
  },
  formula: '2 * distance * TAN(RADIANS(angle) / 2)',
  run,
});
