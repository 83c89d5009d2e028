import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { constant, iso, luminanceOrNone, time } from './parameters.ts';

function run(luminance: In<'luminance'>, iso: In<'iso'>, time: In<'time'>, constant: number) {
  return Math.sqrt((luminance * iso * time) / constant);
}

export default define({
  name: 'SPOTF',
  family: 'exposure',
  summary: 'The f-number that a spot meter gives for a luminance.',
  job: 'You know the luminance of a wall or a face and want the stop that puts it at middle grey.',
  search: ['what stop', 'spot meter', 'reflected', 'aperture', 'f-stop', 'nits to stop'],
  parameters: [luminanceOrNone, iso, time, constant],
  result: 'fNumber',
  alike: ['SPOTLUMINANCE', 'SPOTTIME', 'SPOTISO', 'INCIDENTF', 'HEADROOM'],
  limits: 'Puts what is metered at middle grey: a white wall comes out grey at this stop.',
  sources: [{ from: 'ISO 2720', at: 'N²/t = L·S/K; K of 10.6 to 13.4, from memory' }],
  examples: [
    {
      args: [3200, 125, '1/125'],
      result: 16,
      why: 'printed worked example, K = 12.5',
      source: 'ANSI PH3.49',
    },
    { args: [200, 100, '1/100'], result: 4, why: '√(200 · 100 / 100 / 12.5)' },
  ],
  laws: {
    'four times the light is twice the f-number': (luminance, iso, time, constant) =>
      near(run(4 * luminance, iso, time, constant), 2 * run(luminance, iso, time, constant)),
    'twice the speed at half the time changes nothing': (luminance, iso, time, constant) =>
      near(run(luminance, 2 * iso, time / 2, constant), run(luminance, iso, time, constant)),
  },
  formula: 'SQRT(luminance * iso * time / constant)',
  run,
});
