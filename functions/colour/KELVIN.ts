import { define } from '../define.ts';
import { positive, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(mired: In<'mired'>): In<'colourTemperature'> {
  return 1e6 / mired;
}

export default define({
  name: 'KELVIN',
  family: 'colour',
  summary: 'Colour temperature in kelvin from mired.',
  job: 'You reckoned with gels in mired and want the colour temperature that comes out.',
  search: ['mired to kelvin', 'colour temperature', 'gel'],
  parameters: [
    {
      name: 'mired',
      quantity: 'mired',
      domain: sampled(positive, 50, 1000),
      help: 'Mired of a light, not of a shift.',
    },
  ],
  result: 'colourTemperature',
  alike: ['MIRED', 'KELVINTHROUGH'],
  limits: 'For light near the Planckian locus; how green or magenta it is needs DUV.',
  sources: [{ from: 'mired tables' }],
  examples: [
    { args: [312.5], result: 3200, why: 'a million over 312.5' },
    { args: ['182 mired'], result: 5500, why: 'as printed', source: 'mired tables', within: 6 },
  ],
  laws: { 'the mired of it are the mired': (mired) => near(1e6 / run(mired), mired) },
  formula: '1000000 / mired',
  run,
});
