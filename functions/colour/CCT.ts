import { define } from '../define.ts';
import { chromaticityX, chromaticityY } from '../domains.ts';
import { near } from '../near.ts';
import { isError, type FunctionError, type In } from '../values.ts';
import { planckXY } from './planckXY.ts';
import { temperatureOf } from './temperatureOf.ts';

function run(
  x: In<'chromaticity'>,
  y: In<'chromaticity'>,
): In<'colourTemperature'> | FunctionError {
  const nearest = temperatureOf('CCT', x, y);
  return isError(nearest) ? nearest : nearest.kelvin;
}

export default define({
  name: 'CCT',
  family: 'colour',
  summary: 'Correlated colour temperature of a chromaticity.',
  job: 'The colour meter gives x and y and you want the kelvin to set on the camera.',
  search: ['kelvin', 'colour meter', 'white balance', 'correlated colour temperature', 'xy'],
  parameters: [
    { name: 'x', quantity: 'chromaticity', domain: chromaticityX, help: 'CIE 1931 x.' },
    { name: 'y', quantity: 'chromaticity', domain: chromaticityY, help: 'CIE 1931 y.' },
  ],
  result: 'colourTemperature',
  alike: ['DUV', 'PLANCKX', 'MIRED'],
  limits:
    'Within 0.5 K from 1500 to 10,000 K and 5 K to 20,000 K. Refused farther than 0.05 Duv from the locus, and outside 1000 to 100,000 K.',
  sources: [
    { from: 'Ohno 2013', at: 'triangular and parabolic solution' },
    { from: 'CIE 15', at: 'CIE 1960 u, v; c2 = 1.4388e-2 m·K' },
  ],
  examples: [
    { args: [0.3127, 0.329], result: 6504, why: 'illuminant D65', source: 'CIE 15', within: 1.5 },
    { args: [0.44758, 0.40745], result: 2856, why: 'illuminant A', source: 'CIE 15', within: 1 },
    { args: [1 / 3, 1 / 3], result: 5455, why: 'equal energy at every wavelength', within: 1 },
  ],
  laws: {
    'with its Duv it gives the chromaticity again': (x, y) => {
      const nearest = temperatureOf('CCT', x, y);
      if (isError(nearest)) return isError(run(x, y));
      const back = planckXY(nearest.kelvin, nearest.duv);
      return near(back.x, x, 1e-5) && near(back.y, y, 1e-5);
    },
  },
  formula: {
    none: 'The nearest point of the Planckian locus is looked up in an integrated table.',
    equation: 'the temperature at which the Planckian locus comes nearest to u, v (CIE 1960)',
  },
  run,
});
