import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { constant, fNumber, iso, luminance } from './parameters.ts';

function run(luminance: In<'luminance'>, iso: In<'iso'>, fNumber: In<'fNumber'>, constant: number) {
  return (fNumber ** 2 * constant) / (luminance * iso);
}

export default define({
  name: 'SPOTTIME',
  family: 'exposure',
  summary: 'The exposure time that puts a luminance at middle grey.',
  job: 'A spot reading, the speed and the stop are given and you want the shutter.',
  search: ['what shutter', 'shutter speed', 'spot meter', 'exposure time'],
  parameters: [luminance, iso, fNumber, constant],
  result: 'time',
  alike: ['SPOTF', 'SPOTISO', 'INCIDENTTIME', 'SHUTTERANGLE'],
  limits: 'Puts what is metered at middle grey.',
  sources: [{ from: 'ISO 2720', at: 'N²/t = L·S/K; K of 10.6 to 13.4, from memory' }],
  examples: [
    {
      args: [3200, 125, 'f/16'],
      result: 1 / 125,
      why: 'printed worked example, K = 12.5',
      source: 'ANSI PH3.49',
    },
    { args: [200, 100, 'f/4'], result: 0.01, why: '16 · 12.5 / (200 · 100)' },
  ],
  laws: {
    'twice the light halves the time': (luminance, iso, fNumber, constant) =>
      near(run(2 * luminance, iso, fNumber, constant), run(luminance, iso, fNumber, constant) / 2),
    'the time gives the stop back': (luminance, iso, fNumber, constant) =>
      near(
        Math.sqrt((luminance * iso * run(luminance, iso, fNumber, constant)) / constant),
        fNumber,
      ),
  },
  formula: 'f_number^2 * constant / (luminance * iso)',
  run,
});
