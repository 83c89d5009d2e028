import { define } from '../define.ts';
import { zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { footcandle } from './foot.ts';
import type { In } from '../values.ts';

function run(footcandles: In<'number'>): In<'illuminance'> {
  return footcandles * footcandle;
}

export default define({
  name: 'LUX',
  family: 'distance',
  summary: 'Footcandles as lux.',
  job: 'A plain column holds footcandles and the sheet is in lux.',
  search: ['fc', 'convert', 'metric', 'footcandles to lux'],
  parameters: [
    {
      name: 'footcandles',
      quantity: 'number',
      domain: zeroOrMore,
      help: 'A plain number of footcandles.',
    },
  ],
  result: 'illuminance',
  alike: ['FOOTCANDLES', 'NITS'],
  limits: 'Exact. A cell that already knows it is an illuminance needs no conversion: type 25 fc.',
  sources: [{ from: 'NIST SP 811', at: 'Appendix B.8' }],
  examples: [
    {
      args: [1],
      result: 10.763_91,
      why: 'the printed factor',
      source: 'NIST SP 811',
      within: 5e-6,
    },
    { args: [0.3048 ** 2], result: 1, why: 'a lumen on each square metre' },
  ],
  laws: {
    'twice the footcandles, twice the lux': (footcandles) =>
      near(run(2 * footcandles), 2 * run(footcandles)),
  },
  formula: 'footcandles / 0.3048^2',
  run,
});
