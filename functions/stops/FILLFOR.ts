import { define } from '../define.ts';
import { levelOrNone, positive, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(keySide: number, ratio: In<'ratio'>) {
  return keySide / ratio;
}

export default define({
  name: 'FILLFOR',
  family: 'stops',
  summary: 'What the fill side must read for a wanted contrast ratio.',
  job: 'The key is set; you want to know what to bring the fill side to.',
  search: ['fill level', 'set the fill', 'ratio', 'shadow side', 'how much fill'],
  parameters: [
    {
      name: 'key_side',
      quantity: 'level',
      domain: levelOrNone,
      help: 'Reading on the bright side, all lights on.',
    },
    {
      name: 'ratio',
      quantity: 'ratio',
      domain: sampled(positive, 0.5, 64),
      help: 'Key side over fill side: 4 is 4:1, two stops.',
    },
  ],
  result: { as: 'key_side' },
  alike: ['FFILLFOR', 'CONTRASTRATIO', 'LEVELAT'],
  limits: 'The reading with all lights on; raising the fill may raise the key side too.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [400, 4], result: 100, why: '4:1 is a quarter of the key side' },
    { args: [300, '3:1'], result: 100, why: 'a ratio may be written as people say it' },
  ],
  laws: {
    'the fill side then gives the ratio': (keySide, ratio) =>
      near(run(keySide, ratio) * ratio, keySide),
  },
  formula: 'key_side / ratio',
  run,
});
