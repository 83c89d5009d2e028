import { define } from '../define.ts';
import { coneAngle, onSet } from '../domains.ts';
import { near } from '../near.ts';
import { radians } from './degrees.ts';
import type { In } from '../values.ts';

function run(diameter: In<'length'>, angle: In<'angle'>) {
  return diameter / (2 * Math.tan(radians(angle) / 2));
}

export default define({
  name: 'BEAMDISTANCE',
  family: 'distance',
  summary: 'How far back a lamp must stand for its beam to be so wide.',
  job: 'You know the beam angle and what must be covered and want to know where the lamp goes.',
  search: ['how far', 'cover', 'back off', 'spread', 'throw distance'],
  parameters: [
    { name: 'diameter', quantity: 'length', domain: onSet, help: 'Width that the beam must have.' },
    {
      name: 'angle',
      quantity: 'angle',
      domain: coneAngle,
      help: 'Whole angle of the beam, edge to edge.',
    },
  ],
  result: 'length',
  alike: ['BEAMDIAMETER', 'BEAMANGLE', 'DISTANCEFOR'],
  limits: 'Straight on to the surface, and for a source that is small against the beam.',
  sources: [{ from: 'common practice', at: 'geometry of a cone' }],
  examples: [
    { args: [10, 90], result: 5, why: 'at 90° half the width is the distance' },
    {
      args: ['6 ft', '53.13010235415598°'],
      result: 6 * 0.3048,
      why: 'at 53° the beam is as wide as it is long',
    },
  ],
  laws: {
    'from there the beam is that wide': (diameter, angle) =>
      near(2 * run(diameter, angle) * Math.tan(radians(angle) / 2), diameter),
  },
  formula: 'diameter / (2 * TAN(RADIANS(angle) / 2))',
  run,
});
