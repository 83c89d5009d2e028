import { define } from '../define.ts';
import { light } from '../domains.ts';
import { near } from '../near.ts';

export default define({
  name: 'STOPS',
  family: 'stops',
  summary: 'How many stops one level is over (+) or under (−) another.',
  job: 'You have two readings in lux, or two in candela per square metre, and want the difference as a camera sees it.',
  search: ['difference', 'how far off', 'over', 'under', 'compare levels', 'log2'],
  parameters: [
    { name: 'level', quantity: 'level', domain: light, help: 'The reading in question.' },
    {
      name: 'reference',
      quantity: 'level',
      domain: light,
      help: 'What it is held against, in the same unit.',
    },
  ],
  result: 'stops',
  alike: ['FSTOPS', 'LEVELAT', 'CONTRASTRATIO'],
  limits: 'Both levels must be of the same kind; for readings in f-numbers see FSTOPS.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [400, 100], result: 2, why: 'four times the light is two stops over' },
    { args: ['25 fc', '50 fc'], result: -1, why: 'half the light is one stop under' },
  ],
  laws: {
    'the other way round changes the sign': (level, reference) =>
      near(Math.log2(level / reference), -Math.log2(reference / level)),
  },
  formula: 'LN(level / reference) / LN(2)',
  run: (level, reference) => Math.log2(level / reference),
});
