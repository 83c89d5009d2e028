import { define } from '../define.ts';
import { levelOrNone } from '../domains.ts';
import { isError, refuse } from '../values.ts';
import { near } from '../near.ts';

function run(total: number, other: number) {
  if (other > total) {
    return refuse(`WITHOUT: other must be no more than total, ${total}, not ${other}.`);
  }
  return total - other;
}

export default define({
  name: 'WITHOUT',
  family: 'stops',
  summary: 'What is left when one light, or the ambient, is taken away.',
  job: 'You metered with everything on and with the lamps off, and want what the lamps alone give.',
  search: ['subtract', 'ambient', 'lamps off', 'take away', 'one light alone', 'minus'],
  parameters: [
    {
      name: 'total',
      quantity: 'level',
      domain: levelOrNone,
      help: 'Reading with the light on that is to be taken away.',
    },
    {
      name: 'other',
      quantity: 'level',
      domain: levelOrNone,
      help: 'The light to be taken away, metered alone in the same place and unit.',
    },
  ],
  result: { as: 'total' },
  alike: ['FWITHOUT', 'FCOMBINE', 'KEYFILLRATIO'],
  limits:
    'The meter in the same place, pointed the same way, both times. A small rest of two large readings is uncertain.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [500, 100], result: 400, why: 'the lamps without the window' },
    { args: ['12 fc', '12 fc'], result: 0, why: 'nothing is left: the other was all of it' },
  ],
  laws: {
    'the rest and the other make the total': (total, other) => {
      const rest = run(total, other);
      return isError(rest) ? other > total : near(rest + other, total);
    },
  },
  formula: 'total - other',
  run,
});
