import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { constant, luminance } from './parameters.ts';

function run(luminance: In<'luminance'>, constant: number) {
  return Math.log2((luminance * 100) / constant);
}

export default define({
  name: 'LUMINANCEEV',
  family: 'exposure',
  summary: 'Exposure value at ISO 100 of a luminance.',
  job: 'You have candela per square metre and want the EV that a spot meter would show.',
  search: ['nits to exposure value', 'spot meter', 'how bright', 'convert luminance'],
  parameters: [luminance, constant],
  result: 'ev',
  alike: ['EVLUMINANCE', 'LUXEV', 'SPOTF'],
  limits: 'Meters differ in their constant K: 12.5 and 14 are both in use, 0.16 EV apart.',
  sources: [
    { from: 'ISO 2720', at: 'exposure equations; K of 10.6 to 13.4, from memory' },
    { from: 'exposure value table' },
  ],
  examples: [
    { args: [512], result: 12, why: 'printed: 512 cd/m² at EV 12', source: 'exposure value table' },
    {
      args: ['0.036 fL'],
      result: 0,
      why: 'printed: 0.036 footlambert at EV 0',
      source: 'exposure value table',
      within: 0.03,
    },
  ],
  laws: {
    'twice the light is one EV more': (luminance, constant) =>
      near(run(2 * luminance, constant), run(luminance, constant) + 1),
  },
  formula: 'LN(luminance * 100 / constant) / LN(2)',
  run,
});
