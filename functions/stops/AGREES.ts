import { define } from '../define.ts';
import { lightLevel, sampled, zeroOrMore } from '../domains.ts';
import type { In } from '../values.ts';
import { grace } from './verdictWords.ts';

function run(reading: number, target: number, tolerance: In<'stops'>) {
  return Math.abs(Math.log2(reading / target)) <= tolerance + grace;
}

export default define({
  name: 'AGREES',
  family: 'stops',
  summary: 'Whether a level is within a tolerance of its target.',
  job: 'You want a yes or a no for each point of the plan.',
  search: ['close enough', 'within tolerance', 'matches', 'on target', 'check'],
  parameters: [
    { name: 'reading', quantity: 'level', domain: lightLevel, help: 'What the meter says.' },
    {
      name: 'target',
      quantity: 'level',
      domain: lightLevel,
      help: 'What the plan says, in the same unit.',
    },
    {
      name: 'tolerance',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 0, 3),
      fromBook: 'tolerance',
      help: 'How far off still agrees, either way; the sheet’s tolerance unless given, a third of a stop at first.',
    },
  ],
  result: 'truth',
  alike: ['FAGREES', 'STOPS'],
  limits: 'The edge counts as agreeing.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [120, 100], result: true, why: '0.26 stop over is within a third' },
    { args: [200, 100], result: false, why: 'a whole stop is not' },
    { args: [200, 100, 1], result: true, why: 'the edge of the tolerance agrees' },
  ],
  laws: {
    'a reading agrees with itself': (reading, _target, tolerance) =>
      run(reading, reading, tolerance),
    'it does not matter which is which': (reading, target, tolerance) =>
      run(reading, target, tolerance) === run(target, reading, tolerance),
  },
  formula: 'ABS(LN(reading / target) / LN(2)) <= tolerance + 0.000000001',
  run,
});
