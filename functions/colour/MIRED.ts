import { define } from '../define.ts';
import { colourTemperature } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(kelvin: In<'colourTemperature'>): In<'mired'> {
  return 1e6 / kelvin;
}

export default define({
  name: 'MIRED',
  family: 'colour',
  summary: 'Colour temperature in mired, the scale on which filters shift by a fixed amount.',
  job: 'You want to see how far apart two colour temperatures look, or reckon with gels.',
  search: ['micro reciprocal', 'kelvin to mired', 'gel', 'colour temperature'],
  parameters: [
    {
      name: 'kelvin',
      quantity: 'colourTemperature',
      domain: colourTemperature,
      help: 'Colour temperature.',
    },
  ],
  result: 'mired',
  alike: ['KELVIN', 'MIREDSHIFT', 'KELVINTHROUGH'],
  limits: 'For light near the Planckian locus; how green or magenta it is needs DUV.',
  sources: [{ from: 'mired tables' }],
  examples: [
    { args: [5500], result: 182, why: 'as printed', source: 'mired tables', within: 0.5 },
    { args: ['3200 K'], result: 312.5, why: 'a million over 3200' },
  ],
  laws: {
    'twice the kelvin is half the mired': (kelvin) => near(run(2 * kelvin), run(kelvin) / 2),
  },
  formula: '1000000 / kelvin',
  run,
});
