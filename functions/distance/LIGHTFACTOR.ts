import { define } from '../define.ts';
import { light, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { stopsInWords } from '../stops/verdictWords.ts';
import type { FunctionError, In } from '../values.ts';

function run(total: In<'level'>, wanted: In<'level'>, own: In<'level'>): number | FunctionError {
  const factor = 1 + (wanted - total) / own;
  if (factor >= 0) return factor;
  const over = wanted > 0 ? `${stopsInWords(Math.log2((total - own) / wanted))} over` : 'too much';
  return { code: '#NUM!', message: `the other lights alone are ${over}`, quiet: true };
}

export default define({
  name: 'LIGHTFACTOR',
  family: 'distance',
  summary:
    'What one light’s own output must be multiplied by to bring a point to the wanted level.',
  job: 'A point is over or under, several lights reach it, and you want to correct with one of them.',
  search: ['correct', 'close the gap', 'how much more light', 'dim', 'own share', 'spill'],
  parameters: [
    {
      name: 'total',
      quantity: 'level',
      domain: light,
      help: 'The point as metered with all lights on.',
    },
    { name: 'wanted', quantity: 'level', domain: zeroOrMore, help: 'The level wanted there.' },
    {
      name: 'own',
      quantity: 'level',
      domain: light,
      help: 'What this light alone gives there, ambient taken away; all of the total where no other light reaches.',
    },
  ],
  result: 'factor',
  alike: ['NEWDISTANCE', 'NEWOUTPUT', 'WITHOUT'],
  limits: 'Single readings must be taken with the same receptor pointed the same way as the total.',
  sources: [{ from: 'common practice' }],
  examples: [
    {
      args: [100, 150, 50],
      result: 2,
      why: 'half the light is its own: 50 more means twice its output',
    },
    { args: [80, 40, 80], result: 0.5, why: 'alone at the point: half the light, half the output' },
    { args: [60, 40, 40], result: 0.5, why: '20 spill from elsewhere, so 20 of its 40 must go' },
  ],
  laws: {
    'with the factor applied the point is as wanted': (total, wanted, own) => {
      const part = Math.min(own, total);
      const factor = run(total, wanted, part);
      return typeof factor !== 'number' || near(total - part + part * factor, wanted, 1e-9);
    },
  },
  formula: '1 + (wanted - total) / own',
  run,
});
