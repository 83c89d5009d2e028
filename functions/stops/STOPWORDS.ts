import { define } from '../define.ts';
import { any } from '../domains.ts';
import { stopsInWords } from './verdictWords.ts';

export default define({
  name: 'STOPWORDS',
  family: 'stops',
  summary: 'A number of stops as people say it: "3/4 stop", "1 2/3 stops".',
  job: 'You write a sentence in a cell and want stops in it as a crew says them.',
  search: ['in words', 'say stops', 'third of a stop', 'text of stops'],
  parameters: [
    { name: 'stops', quantity: 'stops', domain: any, help: 'Over or under: the sign is not said.' },
  ],
  result: 'text',
  alike: ['VERDICT', 'STOPS', 'FTENTHS'],
  limits: 'Thirds, halves and quarters are named where they fit to 0.005 stop, else tenths.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [0.75], result: '3/4 stop', why: 'a fraction that people use' },
    { args: ['-1 2/3'], result: '1 2/3 stops', why: 'the sign is not said' },
    { args: [0.42], result: '0.4 stop', why: 'no fraction fits: tenths' },
  ],
  laws: {
    'over and under are said alike': (stops) => stopsInWords(stops) === stopsInWords(-stops),
  },
  formula: {
    none: 'It gives words; written with TEXT it would say decimals where people say thirds.',
    equation:
      '|stops| as a whole number and a half, third or quarter where one is within 0.005 stop, else to a tenth',
  },
  run: stopsInWords,
});
