import { define } from '../define.ts';
import { onSet } from '../domains.ts';
import { near } from '../near.ts';
import { degrees, radians } from './degrees.ts';
import type { In } from '../values.ts';

function run(size: In<'length'>, distance: In<'length'>) {
  return degrees(2 * Math.atan(size / (2 * distance)));
}

export default define({
  name: 'SOURCEANGLE',
  family: 'distance',
  summary: 'How large a source looks from the subject: how soft it is.',
  job: 'You want a soft source to stay as soft when it is moved, or to compare two.',
  search: ['softness', 'soft light', 'how soft', 'wrap', 'shadow edge'],
  parameters: [
    { name: 'size', quantity: 'length', domain: onSet, help: 'Width or height of the lit face.' },
    { name: 'distance', quantity: 'length', domain: onSet, help: 'Face to subject.' },
  ],
  result: 'angle',
  alike: ['SOURCESIZE', 'FARFIELD', 'PANELLUX'],
  limits:
    'Seen straight on; turned away, the face looks narrower. The diffusion counts, not the lamp behind.',
  sources: [{ from: 'common practice', at: 'angular size' }],
  examples: [
    { args: [2, 1], result: 90, why: 'a 2 m frame from 1 m fills 90°' },
    { args: ['4 ft', '2 ft'], result: 90, why: 'the same in feet' },
  ],
  laws: {
    'twice the size from twice as far is as soft': (size, distance) =>
      near(run(2 * size, 2 * distance), run(size, distance)),
    'a face of that angle has that size': (size, distance) =>
      near(2 * distance * Math.tan(radians(run(size, distance)) / 2), size),
  },
  formula: 'DEGREES(2 * ATAN(size / (2 * distance)))',
  run,
});
