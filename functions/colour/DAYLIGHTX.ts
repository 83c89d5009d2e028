import { define } from '../define.ts';
import { between } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { daylightXY } from './daylight.ts';

function run(kelvin: In<'colourTemperature'>): In<'chromaticity'> {
  return daylightXY(kelvin).x;
}

export default define({
  name: 'DAYLIGHTX',
  family: 'colour',
  summary: 'Chromaticity x of daylight of a colour temperature.',
  job: 'You want a lamp to match daylight, which is greener than a black body of the same kelvin.',
  search: ['daylight', 'D65', 'D55', 'sky', 'chromaticity', 'coordinates'],
  parameters: [
    {
      name: 'kelvin',
      quantity: 'colourTemperature',
      domain: between(4000, 25_000),
      help: 'Colour temperature of the daylight; the CIE’s D65 is 6504 K.',
    },
  ],
  result: 'chromaticity',
  alike: ['DAYLIGHTY', 'PLANCKX', 'CCT'],
  limits:
    'From 4000 to 25,000 K, a mean of skies; real daylight lies around it, up to 0.01 Duv off.',
  sources: [{ from: 'CIE 15', at: '3.1, phases of daylight (clause from memory)' }],
  examples: [
    {
      args: [(6500 * 1.4388) / 1.438],
      result: 0.3127,
      why: 'illuminant D65',
      source: 'CIE 15',
      within: 5e-5,
    },
    {
      args: [(5000 * 1.4388) / 1.438],
      result: 0.3457,
      why: 'illuminant D50',
      source: 'CIE 15',
      within: 5e-5,
    },
  ],
  laws: {
    'it lies on the daylight locus': (kelvin) => {
      const { x, y } = daylightXY(kelvin);
      return near(run(kelvin), x) && near(y, -3 * x ** 2 + 2.87 * x - 0.275);
    },
    'hotter is bluer': (kelvin) => kelvin > 24_900 || run(kelvin + 50) < run(kelvin),
  },
  formula:
    'IF(kelvin <= 7000, -4607000000 / kelvin^3 + 2967800 / kelvin^2 + 99.11 / kelvin + 0.244063, -2006400000 / kelvin^3 + 1901800 / kelvin^2 + 247.48 / kelvin + 0.23704)',
  run,
});
