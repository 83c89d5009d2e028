import { define } from '../define.ts';
import { lensStop, sampled, shareAboveZero } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(fNumber: In<'fNumber'>, transmission: In<'share'>) {
  return fNumber / Math.sqrt(transmission);
}

export default define({
  name: 'TNUMBER',
  family: 'exposure',
  summary: 'T-number of a lens: its f-number with the light lost in the glass.',
  job: 'The lens is marked in f-numbers only and its glass takes some light.',
  search: ['T-stop', 'lens loss', 'transmission', 'zoom loses light', 'glass'],
  parameters: [
    {
      name: 'f_number',
      quantity: 'fNumber',
      domain: lensStop,
      help: 'The f-number that the lens is set to.',
    },
    {
      name: 'transmission',
      quantity: 'share',
      domain: sampled(shareAboveZero, 0.4, 1),
      help: 'Share of the light that comes through the glass.',
    },
  ],
  result: 'fNumber',
  alike: ['FNUMBERAT', 'EIAFTER', 'TRANSMISSIONSTOPS'],
  limits: 'One figure for all colours and the middle of the picture.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/2.8', '80 %'], result: Math.sqrt(10), why: 'a third of a stop lost: T3.2' },
    { args: ['f/4', 0.5], result: 2 ** 2.5, why: 'half the light lost is one whole mark' },
  ],
  laws: {
    'perfect glass changes nothing': (fNumber) => run(fNumber, 1) === fNumber,
    'the T-number gives the transmission back': (fNumber, transmission) =>
      near((fNumber / run(fNumber, transmission)) ** 2, transmission),
  },
  formula: 'f_number / SQRT(transmission)',
  run,
});
