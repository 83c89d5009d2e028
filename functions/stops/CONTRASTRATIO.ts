import { define } from '../define.ts';
import { levelOrNone, lightLevel } from '../domains.ts';
import { near } from '../near.ts';

function run(keySide: number, fillSide: number) {
  return keySide / fillSide;
}

export default define({
  name: 'CONTRASTRATIO',
  family: 'stops',
  summary: 'Contrast of a face: the key side over the fill side, all lights on.',
  job: 'You metered both sides of the face with everything lit and want the ratio that the camera sees.',
  search: ['ratio', 'contrast', 'key to fill', 'two sides', 'moody', 'flat'],
  parameters: [
    {
      name: 'key_side',
      quantity: 'level',
      domain: levelOrNone,
      help: 'Reading on the bright side, all lights on.',
    },
    {
      name: 'fill_side',
      quantity: 'level',
      domain: lightLevel,
      help: 'Reading on the shadow side, all lights on, in the same unit.',
    },
  ],
  result: 'ratio',
  alike: ['FCONTRASTRATIO', 'KEYFILLRATIO', 'LIGHTINGRATIO', 'FILLFOR'],
  limits:
    'A dome on the fill side still sees some of the key. The ratio of the lights metered one at a time is KEYFILLRATIO.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [400, 100], result: 4, why: 'two stops between the sides is 4:1' },
    { args: ['30 fc', '10 fc'], result: 3, why: 'the unit falls out of a ratio' },
  ],
  laws: {
    'dimming all lights alike keeps the ratio': (keySide, fillSide) =>
      near(run(keySide / 2, fillSide / 2), run(keySide, fillSide)),
  },
  formula: 'key_side / fill_side',
  run,
});
