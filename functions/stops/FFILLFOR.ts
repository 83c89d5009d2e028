import { define } from '../define.ts';
import { positive, sampled, stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(keySide: In<'fNumber'>, ratio: In<'ratio'>) {
  return keySide / Math.sqrt(ratio);
}

export default define({
  name: 'FFILLFOR',
  family: 'stops',
  summary: 'What f-number the fill side must read for a wanted contrast ratio.',
  job: 'The key side meters the stop you want; you want to know what to bring the fill side to.',
  search: ['fill level', 'set the fill', 'ratio', 'shadow side', 'how much fill'],
  parameters: [
    {
      name: 'key_side',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'Reading on the bright side, all lights on.',
    },
    {
      name: 'ratio',
      quantity: 'ratio',
      domain: sampled(positive, 0.5, 64),
      help: 'Key side over fill side: 4 is 4:1, two stops.',
    },
  ],
  result: 'fNumber',
  alike: ['FILLFOR', 'FCONTRASTRATIO', 'FNUMBERAT'],
  limits: 'At one speed and time; raising the fill may raise the key side too.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/5.6', '4:1'], result: 2 ** 1.5, why: '4:1 under f/5.6 is f/2.8' },
    { args: ['f/4', 2], result: 2 ** 1.5, why: '2:1 is one stop' },
  ],
  laws: {
    'the fill side then gives the ratio': (keySide, ratio) =>
      near(run(keySide, ratio) ** 2 * ratio, keySide ** 2),
  },
  formula: 'key_side / SQRT(ratio)',
  run,
});
