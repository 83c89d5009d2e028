import { define } from '../define.ts';
import { zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { footlambert } from './foot.ts';
import type { In } from '../values.ts';

function run(footlamberts: In<'number'>): In<'luminance'> {
  return footlamberts * footlambert;
}

export default define({
  name: 'NITS',
  family: 'distance',
  summary: 'Footlamberts as candela per square metre.',
  job: 'A plain column holds footlamberts and the sheet is in candela per square metre.',
  search: ['fL', 'footlamberts', 'convert', 'candela per square metre'],
  parameters: [
    {
      name: 'footlamberts',
      quantity: 'number',
      domain: zeroOrMore,
      help: 'A plain number of footlamberts.',
    },
  ],
  result: 'luminance',
  alike: ['FOOTLAMBERTS', 'LUX'],
  limits: 'Exact. A cell that already knows it is a luminance needs no conversion: type 23 fL.',
  sources: [{ from: 'NIST SP 811', at: 'Appendix B.8' }],
  examples: [
    {
      args: [1],
      result: 3.426_259,
      why: 'the printed factor',
      source: 'NIST SP 811',
      within: 5e-7,
    },
    {
      args: [Math.PI],
      result: 1 / 0.3048 ** 2,
      why: 'π footlamberts are a candela on each square foot',
    },
  ],
  laws: {
    'twice the footlamberts, twice the nits': (footlamberts) =>
      near(run(2 * footlamberts), 2 * run(footlamberts)),
  },
  formula: 'footlamberts / (PI() * 0.3048^2)',
  run,
});
