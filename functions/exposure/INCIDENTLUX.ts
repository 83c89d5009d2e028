import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { fNumber, iso, receptor, time } from './parameters.ts';

function run(fNumber: In<'fNumber'>, iso: In<'iso'>, time: In<'time'>, constant: number) {
  return (fNumber ** 2 * constant) / (iso * time);
}

export default define({
  name: 'INCIDENTLUX',
  family: 'exposure',
  summary: 'The illuminance that a camera setting wants at the subject.',
  job: 'The stop is decided and you want to know how much light to bring.',
  search: [
    'how much light',
    'lux needed',
    'light for a stop',
    'how many lux',
    'footcandles needed',
  ],
  parameters: [fNumber, iso, time, receptor],
  result: 'illuminance',
  alike: ['INCIDENTF', 'DISTANCEFOR', 'SPOTLUMINANCE'],
  limits:
    'Dome and flat receptor differ by 0.44 stop; the book’s receptor is used unless one is given.',
  sources: [
    { from: 'ISO 2720', at: 'N²/t = E·S/C; C of 240 to 400 flat, 320 to 540 dome, from memory' },
  ],
  examples: [
    {
      args: ['f/2.8', 500, '1/48', 'dome'],
      result: 261.12,
      why: 'f/2.8 at 24 fps, 180° and ISO 500, metered with a dome',
    },
    { args: ['f/2.8', 500, '1/48', 'flat'], result: 192, why: 'the same with a flat receptor' },
  ],
  laws: {
    'one mark more wants twice the light': (fNumber, iso, time, constant) =>
      near(run(fNumber * Math.SQRT2, iso, time, constant), 2 * run(fNumber, iso, time, constant)),
    'the light gives the stop back': (fNumber, iso, time, constant) =>
      near(Math.sqrt((run(fNumber, iso, time, constant) * iso * time) / constant), fNumber),
  },
  formula: 'f_number^2 * receptor / (iso * time)',
  run,
});
