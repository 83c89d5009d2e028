import { define } from '../define.ts';
import { stopReading, stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(key: In<'fNumber'>, fill: In<'fNumber'>) {
  return (key / fill) ** 2;
}

export default define({
  name: 'FKEYFILLRATIO',
  family: 'stops',
  summary: 'Key over fill from f-numbers, each metered alone.',
  job: 'You switched the lights on one at a time, metered f-numbers and want what many crews call the ratio.',
  search: ['ratio', 'key to fill', 'one at a time', 'lamps alone', 'key fill'],
  parameters: [
    {
      name: 'key',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'The key alone, all else off.',
    },
    {
      name: 'fill',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'The fill alone, all else off.',
    },
  ],
  result: 'ratio',
  alike: ['KEYFILLRATIO', 'FLIGHTINGRATIO', 'FCONTRASTRATIO'],
  limits:
    'Both readings at one speed and time. The camera sees less contrast where the fill reaches the key side too: see FLIGHTINGRATIO.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/5.6', 'f/2.8'], result: 4, why: 'key two stops over fill' },
    { args: ['f/4', 'f/2.8'], result: 2, why: 'one stop is 2:1' },
  ],
  laws: {
    'half the fill doubles the ratio': (key, fill) =>
      near(run(key, fill / Math.SQRT2), 2 * run(key, fill)),
  },
  formula: '(key / fill)^2',
  run,
});
