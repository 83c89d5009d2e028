import { define } from '../define.ts';
import { sampled, stopReading, zeroOrMore } from '../domains.ts';
import type { In } from '../values.ts';
import { grace } from './verdictWords.ts';

function run(reading: In<'fNumber'>, target: In<'fNumber'>, tolerance: In<'stops'>) {
  return Math.abs(2 * Math.log2(reading / target)) <= tolerance + grace;
}

export default define({
  name: 'FAGREES',
  family: 'stops',
  summary: 'Whether an f-number reading is within a tolerance of its target.',
  job: 'You want a yes or a no for each point of the plan.',
  search: ['close enough', 'within tolerance', 'matches', 'on target', 'check'],
  parameters: [
    { name: 'reading', quantity: 'fNumber', domain: stopReading, help: 'What the meter says.' },
    { name: 'target', quantity: 'fNumber', domain: stopReading, help: 'What the plan says.' },
    {
      name: 'tolerance',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 0, 3),
      fromBook: 'tolerance',
      help: 'How far off still agrees, either way; the sheet’s tolerance unless given, a third of a stop at first.',
    },
  ],
  result: 'truth',
  alike: ['AGREES', 'FSTOPS'],
  limits: 'Both at one speed and time. The edge counts as agreeing.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/5', 'f/5.6'], result: true, why: 'one third-stop mark off is the edge' },
    { args: ['f/4', 'f/5.6'], result: false, why: 'a whole stop is too far' },
    { args: ['f/4', 'f/5.6', 1], result: true, why: 'unless a whole stop is allowed' },
  ],
  laws: {
    'a reading agrees with itself': (reading, _target, tolerance) =>
      run(reading, reading, tolerance),
    'it does not matter which is which': (reading, target, tolerance) =>
      run(reading, target, tolerance) === run(target, reading, tolerance),
  },
  formula: 'ABS(2 * LN(reading / target) / LN(2)) <= tolerance + 0.000000001',
  run,
});
