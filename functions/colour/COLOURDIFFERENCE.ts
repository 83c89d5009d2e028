import { define } from '../define.ts';
import { chromaticityX, chromaticityY } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { primeFromXY } from './prime.ts';

function run(
  x1: In<'chromaticity'>,
  y1: In<'chromaticity'>,
  x2: In<'chromaticity'>,
  y2: In<'chromaticity'>,
): In<'number'> {
  const [one, other] = [primeFromXY({ x: x1, y: y1 }), primeFromXY({ x: x2, y: y2 })];
  return Math.hypot(one.u - other.u, one.v - other.v);
}

export default define({
  name: 'COLOURDIFFERENCE',
  family: 'colour',
  summary: 'How far apart two chromaticities look: Δu′v′.',
  job: 'Two lamps should match and you want to know whether anyone will see that they do not.',
  search: ['match', 'mismatch', 'delta uv', 'binning', 'compare lamps'],
  parameters: [
    { name: 'x1', quantity: 'chromaticity', domain: chromaticityX, help: 'CIE 1931 x of the one.' },
    { name: 'y1', quantity: 'chromaticity', domain: chromaticityY, help: 'CIE 1931 y of the one.' },
    {
      name: 'x2',
      quantity: 'chromaticity',
      domain: chromaticityX,
      help: 'CIE 1931 x of the other.',
    },
    {
      name: 'y2',
      quantity: 'chromaticity',
      domain: chromaticityY,
      help: 'CIE 1931 y of the other.',
    },
  ],
  result: 'number',
  alike: ['UPRIME', 'VPRIME', 'DUV', 'MIREDSHIFT'],
  limits:
    'For eyes side by side: about 0.001 is just seen at best, 0.003 easily. A camera sees the spectrum, not the chromaticity.',
  sources: [{ from: 'CIE 15', at: '8.1, distance in the CIE 1976 diagram (clause from memory)' }],
  examples: [
    {
      args: [1 / 3, 1 / 3, 0.3, 0.3],
      result: Math.hypot(4 / 19 - 0.2, 9 / 19 - 0.45),
      why: 'from (4, 9)/19 to (0.2, 0.45)',
    },
    { args: [0.3127, 0.329, 0.3127, 0.329], result: 0, why: 'the same light' },
  ],
  laws: {
    'the other way round it is the same': (x1, y1, x2, y2) =>
      near(run(x1, y1, x2, y2), run(x2, y2, x1, y1)),
    'a detour is never shorter': (x1, y1, x2, y2) =>
      run(x1, y1, x2, y2) <= run(x1, y1, 0.35, 0.35) + run(0.35, 0.35, x2, y2) + 1e-12,
  },
  formula:
    'SQRT((4 * x1 / (-2 * x1 + 12 * y1 + 3) - 4 * x2 / (-2 * x2 + 12 * y2 + 3))^2 + ' +
    '(9 * y1 / (-2 * x1 + 12 * y1 + 3) - 9 * y2 / (-2 * x2 + 12 * y2 + 3))^2)',
  run,
});
