import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { iso, luxOrNone, receptor, time } from './parameters.ts';

function run(lux: In<'illuminance'>, iso: In<'iso'>, time: In<'time'>, constant: number) {
  return Math.sqrt((lux * iso * time) / constant);
}

export default define({
  name: 'INCIDENTF',
  family: 'exposure',
  summary: 'The f-number that an incident meter gives for an illuminance.',
  job: 'You know the lux that will fall on the subject and want the stop to shoot at.',
  search: ['what stop', 'lux to stop', 'meter reading', 'aperture', 'f-stop', 'exposure'],
  parameters: [luxOrNone, iso, time, receptor],
  result: 'fNumber',
  alike: ['INCIDENTLUX', 'INCIDENTTIME', 'INCIDENTISO', 'SPOTF'],
  limits:
    'Dome and flat receptor differ by 0.44 stop for the same lux; the book’s receptor is used unless one is given.',
  sources: [
    { from: 'ISO 2720', at: 'N²/t = E·S/C; C of 240 to 400 flat, 320 to 540 dome, from memory' },
  ],
  examples: [
    {
      args: [261.12, 500, '1/48', 'dome'],
      result: 2 ** 1.5,
      why: 'a dome wants 261 lx for f/2.8 at 24 fps, 180° and ISO 500',
    },
    { args: [250, 100, '1 s', 'flat'], result: 10, why: 'the constant C alone sets the stop' },
    { args: [1000, 400, '1/100', 250], result: 4, why: 'a constant in place of a receptor' },
  ],
  laws: {
    'four times the light is twice the f-number': (lux, iso, time, constant) =>
      near(run(4 * lux, iso, time, constant), 2 * run(lux, iso, time, constant)),
    'twice the speed at half the time changes nothing': (lux, iso, time, constant) =>
      near(run(lux, 2 * iso, time / 2, constant), run(lux, iso, time, constant)),
  },
  formula: 'SQRT(lux * iso * time / receptor)',
  run,
});
