import { define } from '../define.ts';
import { chromaticityX, chromaticityY } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { primeFromXY } from './prime.ts';

function run(x: In<'chromaticity'>, y: In<'chromaticity'>): In<'chromaticity'> {
  return primeFromXY({ x, y }).v;
}

export default define({
  name: 'VPRIME',
  family: 'colour',
  summary: 'CIE 1976 v′ of a chromaticity x, y.',
  job: 'You compare colours of two lamps and want coordinates in which equal steps look alike.',
  search: ['v prime', 'uv', '1976', 'UCS', 'chromaticity'],
  parameters: [
    { name: 'x', quantity: 'chromaticity', domain: chromaticityX, help: 'CIE 1931 x.' },
    { name: 'y', quantity: 'chromaticity', domain: chromaticityY, help: 'CIE 1931 y.' },
  ],
  result: 'chromaticity',
  alike: ['UPRIME', 'COLOURDIFFERENCE', 'CCT'],
  limits: 'Exact. CCT and Duv are measured in CIE 1960 u, v, where v is 2/3 of v′.',
  sources: [
    { from: 'CIE 15', at: '8.1, CIE 1976 uniform chromaticity scale diagram (clause from memory)' },
  ],
  examples: [
    { args: [1 / 3, 1 / 3], result: 9 / 19, why: 'equal energy at every wavelength' },
    {
      args: [0.3127, 0.329],
      result: 0.4683,
      why: 'illuminant D65',
      source: 'CIE 15',
      within: 5e-5,
    },
  ],
  laws: {
    'u′ and v′ give x and y again': (x, y) => {
      const { u, v } = primeFromXY({ x, y });
      const sum = 6 * u - 16 * v + 12;
      return near(run(x, y), v) && near((9 * u) / sum, x) && near((4 * v) / sum, y);
    },
  },
  formula: '9 * y / (-2 * x + 12 * y + 3)',
  run,
});
