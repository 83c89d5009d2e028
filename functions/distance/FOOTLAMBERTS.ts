import { define } from '../define.ts';
import { zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { footlambert } from './foot.ts';
import type { In } from '../values.ts';

function run(luminance: In<'luminance'>) {
  return luminance / footlambert;
}

export default define({
  name: 'FOOTLAMBERTS',
  family: 'distance',
  summary: 'Candela per square metre as footlamberts.',
  job: 'A screen or a spot reading is in candela per square metre and someone wants footlamberts.',
  search: ['fL', 'nits', 'convert', 'screen luminance'],
  parameters: [
    { name: 'luminance', quantity: 'luminance', domain: zeroOrMore, help: 'Luminance.' },
  ],
  result: 'number',
  alike: ['NITS', 'FOOTCANDLES'],
  limits:
    'Exact. The result is a plain number: keep cells in their own unit and switch the view instead where you can.',
  sources: [{ from: 'NIST SP 811', at: 'Appendix B.8' }],
  examples: [
    {
      args: [1 / 0.3048 ** 2],
      result: Math.PI,
      why: 'a candela on each square foot is π footlamberts',
    },
    {
      args: [3.426_259],
      result: 1,
      why: 'the printed factor',
      source: 'NIST SP 811',
      within: 2e-7,
    },
  ],
  laws: {
    'back to candela per square metre': (luminance) =>
      near(run(luminance) * footlambert, luminance),
  },
  formula: 'luminance * PI() * 0.3048^2',
  run,
});
