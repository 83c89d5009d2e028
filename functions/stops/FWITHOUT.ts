import { define } from '../define.ts';
import { stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import { isError, refuse, type In } from '../values.ts';

function run(total: In<'fNumber'>, other: In<'fNumber'>) {
  if (other > total) {
    return refuse(`FWITHOUT: other must be no more than total, f/${total}, not f/${other}.`);
  }
  return Math.sqrt(total ** 2 - other ** 2);
}

export default define({
  name: 'FWITHOUT',
  family: 'stops',
  summary: 'The f-number that is left when one light, or the ambient, is taken away.',
  job: 'You metered f-numbers with everything on and with the lamps off, and want what the lamps alone give.',
  search: ['subtract', 'ambient', 'lamps off', 'take away', 'one light alone', 'minus'],
  parameters: [
    {
      name: 'total',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'Reading with the light on that is to be taken away.',
    },
    {
      name: 'other',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'The light to be taken away, metered alone in the same place.',
    },
  ],
  result: 'fNumber',
  alike: ['WITHOUT', 'FCOMBINE', 'FKEYFILLRATIO'],
  limits:
    'At one speed and time, the meter pointed alike. A small rest of two large readings is uncertain.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/8', 'f/5.6'], result: 2 ** 2.5, why: 'half of the light of f/8 is left: f/5.6' },
    { args: ['f/4', 'f/4'], result: 0, why: 'nothing is left: the other was all of it' },
  ],
  laws: {
    'the rest and the other combine to the total': (total, other) => {
      const rest = run(total, other);
      return isError(rest) ? other > total : near(rest ** 2 + other ** 2, total ** 2);
    },
  },
  formula: 'SQRT(total^2 - other^2)',
  run,
});
