import { define } from '../define.ts';
import { zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { footcandle } from './foot.ts';
import type { In } from '../values.ts';

function run(lux: In<'illuminance'>) {
  return lux / footcandle;
}

export default define({
  name: 'FOOTCANDLES',
  family: 'distance',
  summary: 'Lux as footcandles.',
  job: 'A plan is in lux and someone wants the number in footcandles.',
  search: ['fc', 'convert', 'imperial', 'lux to footcandles'],
  parameters: [{ name: 'lux', quantity: 'illuminance', domain: zeroOrMore, help: 'Illuminance.' }],
  result: 'number',
  alike: ['LUX', 'FOOTLAMBERTS'],
  limits:
    'Exact. The result is a plain number: keep cells in their own unit and switch the view instead where you can.',
  sources: [{ from: 'NIST SP 811', at: 'Appendix B.8' }],
  examples: [
    { args: [500], result: 46.45152, why: 'exact: 500 · 0.3048²' },
    {
      args: [10.763_91],
      result: 1,
      why: 'the printed factor',
      source: 'NIST SP 811',
      within: 1e-7,
    },
  ],
  laws: { 'back to lux': (lux) => near(run(lux) * footcandle, lux) },
  formula: 'lux * 0.3048^2',
  run,
});
