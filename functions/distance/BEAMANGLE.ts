import { define } from '../define.ts';
import { onSet } from '../domains.ts';
import { near } from '../near.ts';
import { degrees, radians } from './degrees.ts';
import type { In } from '../values.ts';

function run(diameter: In<'length'>, distance: In<'length'>) {
  return degrees(2 * Math.atan(diameter / (2 * distance)));
}

export default define({
  name: 'BEAMANGLE',
  family: 'distance',
  summary: 'Whole angle of a beam that is so wide at a distance.',
  job: 'You measured the pool of light on the wall, or know what must be covered, and want the beam angle.',
  search: ['spread', 'flood or spot', 'cover', 'which lens', 'angle needed'],
  parameters: [
    {
      name: 'diameter',
      quantity: 'length',
      domain: onSet,
      help: 'Width of the beam at the surface.',
    },
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'Source to the surface, along the beam.',
    },
  ],
  result: 'angle',
  alike: ['BEAMDIAMETER', 'BEAMDISTANCE', 'SOURCEANGLE'],
  limits: 'Straight on to the surface, and for a source that is small against the beam.',
  sources: [{ from: 'common practice', at: 'geometry of a cone' }],
  examples: [
    { args: [10, 5], result: 90, why: 'as far as half its width is 90°' },
    { args: [2, Math.sqrt(3)], result: 60, why: 'half of 60° has the tangent 1/√3' },
  ],
  laws: {
    'a beam of that angle is that wide': (diameter, distance) =>
      near(2 * distance * Math.tan(radians(run(diameter, distance)) / 2), diameter),
  },
  formula: 'DEGREES(2 * ATAN(diameter / (2 * distance)))',
  run,
});
