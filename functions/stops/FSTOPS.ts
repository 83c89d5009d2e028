import { define } from '../define.ts';
import { stopReading } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(reading: In<'fNumber'>, reference: In<'fNumber'>) {
  return 2 * Math.log2(reading / reference);
}

export default define({
  name: 'FSTOPS',
  family: 'stops',
  summary: 'How many stops more light (+) or less (−) one f-number reading means than another.',
  job: 'You metered two places in f-numbers and want to know how far apart they are.',
  search: ['difference', 'how far off', 'over', 'under', 'compare readings', 'how many stops'],
  parameters: [
    { name: 'reading', quantity: 'fNumber', domain: stopReading, help: 'The reading in question.' },
    {
      name: 'reference',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'The reading it is held against, at the same speed and time.',
    },
  ],
  result: 'stops',
  alike: ['STOPS', 'FNUMBERAT', 'FAGREES'],
  limits:
    'Both readings at one speed and one time. Marks mean their exact values: from f/2.8 to f/11 is four stops.',
  sources: [{ from: 'ISO 517', at: 'series of f-numbers' }],
  examples: [
    { args: ['f/2.8', 'f/11'], result: -4, why: 'four whole marks down is four stops under' },
    { args: [5.6, 4], result: 1, why: 'the next whole mark up is twice the light' },
    {
      args: ['f/2.8', 'f/1.4 1/3'],
      result: 5 / 3,
      why: 'a key side 1 2/3 stops over the fill side',
    },
  ],
  laws: {
    'the other way round changes the sign': (reading, reference) =>
      near(run(reading, reference), -run(reference, reading)),
    'twice the f-number is two stops more light': (reading, reference) =>
      near(run(2 * reading, reference), run(reading, reference) + 2),
  },
  formula: '2 * LN(reading / reference) / LN(2)',
  run,
});
