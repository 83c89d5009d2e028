import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { constant, fNumber, luminance, time } from './parameters.ts';

function run(
  luminance: In<'luminance'>,
  fNumber: In<'fNumber'>,
  time: In<'time'>,
  constant: number,
) {
  return (fNumber ** 2 * constant) / (luminance * time);
}

export default define({
  name: 'SPOTISO',
  family: 'exposure',
  summary: 'The speed that puts a luminance at middle grey.',
  job: 'A spot reading, the stop and the shutter are given and you want the speed to set.',
  search: ['what ISO', 'what speed', 'spot meter', 'sensitivity', 'exposure index'],
  parameters: [luminance, fNumber, time, constant],
  result: 'iso',
  alike: ['SPOTF', 'SPOTTIME', 'INCIDENTISO'],
  limits: 'Puts what is metered at middle grey.',
  sources: [{ from: 'ISO 2720', at: 'N²/t = L·S/K; K of 10.6 to 13.4, from memory' }],
  examples: [
    {
      args: [3200, 'f/16', '1/125'],
      result: 125,
      why: 'printed worked example, K = 12.5',
      source: 'ANSI PH3.49',
    },
    { args: [200, 'f/4', '1/100'], result: 100, why: '16 · 12.5 / (200 / 100)' },
  ],
  laws: {
    'half the light wants twice the speed': (luminance, fNumber, time, constant) =>
      near(
        run(luminance / 2, fNumber, time, constant),
        2 * run(luminance, fNumber, time, constant),
      ),
    'the speed gives the stop back': (luminance, fNumber, time, constant) =>
      near(
        Math.sqrt((luminance * run(luminance, fNumber, time, constant) * time) / constant),
        fNumber,
      ),
  },
  formula: 'f_number^2 * constant / (luminance * time)',
  run,
});
