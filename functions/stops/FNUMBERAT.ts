import { define } from '../define.ts';
import { any, stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(fNumber: In<'fNumber'>, stops: In<'stops'>) {
  return fNumber * 2 ** (stops / 2);
}

export default define({
  name: 'FNUMBERAT',
  family: 'stops',
  summary: 'The f-number that means so many stops more light (+) or less (−) than another.',
  job: 'You know the taking stop and want the reading that a point should give, or the stop after a change of speed, filter or light.',
  search: [
    'target stop',
    'stops under',
    'open up',
    'stop down',
    'what should it meter',
    'new stop',
  ],
  parameters: [
    {
      name: 'f_number',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'The f-number that the stops are counted from.',
    },
    {
      name: 'stops',
      quantity: 'stops',
      domain: any,
      help: 'More light is positive, less is negative.',
    },
  ],
  result: 'fNumber',
  alike: ['FSTOPS', 'LEVELAT', 'FMARK', 'FFILLFOR'],
  limits: 'At one speed and time. The result is exact: FMARK names the engraved mark next to it.',
  sources: [{ from: 'ISO 517', at: 'series of f-numbers' }],
  examples: [
    { args: ['f/2.8', -2], result: Math.SQRT2, why: 'two stops under f/2.8 is f/1.4' },
    { args: ['f/8', -4], result: 2, why: 'four stops of neutral density bring f/8 to f/2' },
  ],
  laws: {
    'going back restores the f-number': (fNumber, stops) =>
      near(run(run(fNumber, stops), -stops), fNumber),
    'two stops more is twice the f-number': (fNumber, stops) =>
      near(run(fNumber, stops + 2), 2 * run(fNumber, stops)),
  },
  formula: 'f_number * 2^(stops / 2)',
  run,
});
