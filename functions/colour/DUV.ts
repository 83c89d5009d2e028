import { define } from '../define.ts';
import { chromaticityX, chromaticityY } from '../domains.ts';
import { near } from '../near.ts';
import { isError, type FunctionError, type In } from '../values.ts';
import { uvFromXY, xyFromUV } from './chromaticity.ts';
import { temperatureOf } from './temperatureOf.ts';

function run(x: In<'chromaticity'>, y: In<'chromaticity'>): In<'duv'> | FunctionError {
  const nearest = temperatureOf('DUV', x, y);
  return isError(nearest) ? nearest : nearest.duv;
}

export default define({
  name: 'DUV',
  family: 'colour',
  summary: 'How green (+) or magenta (−) a chromaticity is: its distance from the Planckian locus.',
  job: 'The colour meter gives x and y and you want to know whether the light is green or pink.',
  search: ['green', 'magenta', 'tint', 'colour meter', 'pink'],
  parameters: [
    { name: 'x', quantity: 'chromaticity', domain: chromaticityX, help: 'CIE 1931 x.' },
    { name: 'y', quantity: 'chromaticity', domain: chromaticityY, help: 'CIE 1931 y.' },
  ],
  result: 'duv',
  alike: ['CCT', 'GREENCC', 'PLANCKY'],
  limits:
    'Within 1e-5 from 1500 to 20,000 K. Refused farther than 0.05 from the locus, and outside 1000 to 100,000 K.',
  sources: [
    { from: 'Ohno 2013', at: 'sign and distance in CIE 1960 u, v' },
    { from: 'CIE 15', at: 'CIE 1960 u, v; c2 = 1.4388e-2 m·K' },
  ],
  examples: [
    {
      args: [0.3127, 0.329],
      result: 0.0032,
      why: 'daylight is a little above the locus',
      source: 'Ohno 2013',
      within: 5e-5,
    },
    { args: [0.44758, 0.40745], result: 0, why: 'illuminant A lies on it', within: 1e-5 },
  ],
  laws: {
    'nudged up it is greener': (x, y) => {
      const here = run(x, y);
      const { u, v } = uvFromXY({ x, y });
      const above = xyFromUV({ u, v: v + 1e-4 });
      const there = run(above.x, above.y);
      return isError(here) || isError(there) || there > here;
    },
    'it moves no farther than the chromaticity does': (x, y) => {
      const here = run(x, y);
      const { u, v } = uvFromXY({ x, y });
      const aside = xyFromUV({ u: u + 1e-4, v });
      const there = run(aside.x, aside.y);
      return isError(here) || isError(there) || near(here, there, 1.02e-4);
    },
  },
  formula: {
    none: 'The nearest point of the Planckian locus is looked up in an integrated table.',
    equation: 'the distance of u, v from the Planckian locus (CIE 1960), positive above',
  },
  run,
});
