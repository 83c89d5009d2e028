import { define } from '../define.ts';
import { coneAngle, onSet } from '../domains.ts';
import { near } from '../near.ts';
import { degrees, radians } from './degrees.ts';
import type { In } from '../values.ts';

function run(angle: In<'angle'>, distance: In<'length'>) {
  return 2 * distance * Math.tan(radians(angle) / 2);
}

export default define({
  name: 'SOURCESIZE',
  family: 'distance',
  summary: 'How large a face must be to look so large, and be so soft, from a distance.',
  job: 'You must stand farther back and want the frame that keeps the light as soft.',
  search: ['softness', 'how big a frame', 'same softness', 'soft light'],
  parameters: [
    {
      name: 'angle',
      quantity: 'angle',
      domain: coneAngle,
      help: 'How large it should look from the subject.',
    },
    { name: 'distance', quantity: 'length', domain: onSet, help: 'Face to subject.' },
  ],
  result: 'length',
  alike: ['SOURCEANGLE', 'FARFIELD', 'BEAMDIAMETER'],
  limits: 'Seen straight on; turned away, the face looks narrower.',
  sources: [{ from: 'common practice', at: 'angular size' }],
  examples: [
    { args: [90, 1], result: 2, why: '90° from 1 m is a 2 m frame' },
    { args: ['60°', '3 m'], result: 6 / Math.sqrt(3), why: 'tan 30° is 1/√3' },
  ],
  laws: {
    'a face of that size looks that large': (angle, distance) =>
      near(degrees(2 * Math.atan(run(angle, distance) / (2 * distance))), angle),
  },
  formula: '2 * distance * TAN(RADIANS(angle) / 2)',
  run,
});
