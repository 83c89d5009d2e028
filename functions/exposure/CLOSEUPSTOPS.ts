import { define } from '../define.ts';
import { sampled, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(magnification: In<'ratio'>) {
  return 2 * Math.log2(1 + magnification);
}

export default define({
  name: 'CLOSEUPSTOPS',
  family: 'exposure',
  summary: 'Stops lost to close focus, from the magnification.',
  job: 'The lens is racked out for an insert shot and the light on the chip falls.',
  search: ['macro', 'bellows factor', 'insert shot', 'close focus', 'extension tube'],
  parameters: [
    {
      name: 'magnification',
      quantity: 'ratio',
      domain: sampled(zeroOrMore, 0, 5),
      help: 'Size of the image over size of the thing: 1 is life size.',
    },
  ],
  result: 'stops',
  alike: ['EIAFTER', 'TNUMBER', 'STOPFACTOR'],
  limits:
    'For a simple lens moved away from the chip, alike seen from both ends; not for internal focus.',
  sources: [{ from: 'US Army SS0512', at: 'bellows extension factor' }],
  examples: [
    { args: ['1:1'], result: 2, why: 'life size loses two stops' },
    {
      args: [8 / 12],
      result: Math.log2(2.8),
      why: '8 inches of image from 12 inches: a printed factor of 2.8',
      source: 'US Army SS0512',
      within: 0.03,
    },
  ],
  laws: {
    'its factor is the square of one and the magnification': (magnification) =>
      near(2 ** run(magnification), (1 + magnification) ** 2),
    'far away nothing is lost': () => run(0) === 0,
  },
  formula: '2 * LN(1 + magnification) / LN(2)',
  run,
});
