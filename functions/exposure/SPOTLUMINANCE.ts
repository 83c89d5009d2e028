import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { constant, fNumber, iso, time } from './parameters.ts';

function run(fNumber: In<'fNumber'>, iso: In<'iso'>, time: In<'time'>, constant: number) {
  return (fNumber ** 2 * constant) / (iso * time);
}

export default define({
  name: 'SPOTLUMINANCE',
  family: 'exposure',
  summary: 'The luminance that a camera setting puts at middle grey.',
  job: 'The stop is decided and you want to place walls, windows and faces against its grey.',
  search: ['middle grey', 'what does the stop see', 'nits for a stop', 'spot meter', 'taking stop'],
  parameters: [fNumber, iso, time, constant],
  result: 'luminance',
  alike: ['SPOTF', 'HEADROOM', 'FOOTROOM', 'INCIDENTLUX'],
  limits: 'Middle grey as the meter’s constant K means it; a camera may place its own elsewhere.',
  sources: [
    { from: 'ISO 2720', at: 'N²/t = L·S/K; K of 10.6 to 13.4, from memory' },
    { from: 'ANSI PH3.49' },
  ],
  examples: [
    {
      args: ['f/16', 125, '1/125'],
      result: 3200,
      why: 'printed worked example, K = 12.5',
      source: 'ANSI PH3.49',
    },
    { args: ['f/2.8', 800, '1/50'], result: 6.25, why: '8 · 12.5 / (800 / 50)' },
  ],
  laws: {
    'one mark more is twice the luminance': (fNumber, iso, time, constant) =>
      near(run(fNumber * Math.SQRT2, iso, time, constant), 2 * run(fNumber, iso, time, constant)),
    'the luminance gives the stop back': (fNumber, iso, time, constant) =>
      near(Math.sqrt((run(fNumber, iso, time, constant) * iso * time) / constant), fNumber),
  },
  formula: 'f_number^2 * constant / (iso * time)',
  run,
});
