import { define } from '../define.ts';
import { any, sampled, zeroOrMore } from '../domains.ts';
import { verdictShape, verdictWords } from './verdictWords.ts';

export default define({
  name: 'VERDICT',
  family: 'stops',
  summary: 'Says in words how far off a reading is and which way.',
  job: 'You want to read "1/3 stop over" beside each point and not work it out from signs.',
  search: ['how far off', 'over', 'under', 'agrees', 'tolerance'],
  parameters: [
    {
      name: 'off',
      quantity: 'stops',
      domain: any,
      help: 'Reading minus wanted; under is negative.',
    },
    {
      name: 'tolerance',
      quantity: 'stops',
      domain: sampled(zeroOrMore, 0, 1),
      fromBook: 'tolerance',
      help: 'As far off as this still agrees; the sheet’s if left out.',
    },
  ],
  result: 'verdict',
  alike: ['AGREES', 'PLACEMENT', 'STOPS'],
  limits: 'Thirds, halves and quarters are named where they fit to 0.005 stop, else tenths.',
  sources: [{ from: 'common practice' }],
  examples: [
    {
      args: ['1/3', '1/4'],
      result: '1/3 stop over',
      why: 'a third is more than the quarter allowed',
    },
    { args: [-0.7], result: '0.7 stop under', why: 'less light than wanted' },
    { args: ['1/3'], result: 'agrees', why: 'the tolerance itself still agrees' },
    { args: ['-1 2/3'], result: '1 2/3 stops under', why: 'as people say it' },
  ],
  laws: {
    'over is more light, under is less': (off, tolerance) =>
      verdictShape(verdictWords(off, tolerance)) ===
      (Math.abs(off) <= tolerance + 1e-9 ? 'agrees' : off > 0 ? 'over' : 'under'),
  },
  formula: {
    none: 'It gives words; written as IF, TEXT and ROUND it would say decimals where people say thirds.',
    equation: '|off| in stops, over or under; agrees where |off| ≤ tolerance',
  },
  run: verdictWords,
});
