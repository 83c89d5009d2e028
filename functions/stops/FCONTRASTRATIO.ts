import { define } from '../define.ts';
import { stopReading, stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(keySide: In<'fNumber'>, fillSide: In<'fNumber'>) {
  return (keySide / fillSide) ** 2;
}

export default define({
  name: 'FCONTRASTRATIO',
  family: 'stops',
  summary: 'Contrast of a face from f-numbers: the key side over the fill side, all lights on.',
  job: 'You metered both sides of the face in f-numbers with everything lit and want the ratio that the camera sees.',
  search: ['ratio', 'contrast', 'key to fill', 'two sides', 'moody', 'flat'],
  parameters: [
    {
      name: 'key_side',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'Reading on the bright side, all lights on.',
    },
    {
      name: 'fill_side',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'Reading on the shadow side, all lights on.',
    },
  ],
  result: 'ratio',
  alike: ['CONTRASTRATIO', 'FKEYFILLRATIO', 'FLIGHTINGRATIO', 'FFILLFOR'],
  limits:
    'Both readings at one speed and time. A dome on the fill side still sees some of the key.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/5.6', 'f/2.8'], result: 4, why: 'two marks between the sides is 4:1' },
    {
      args: ['f/2.8', 'f/1.4 1/3'],
      result: 2 ** (5 / 3),
      why: '1 2/3 stops between the sides is about 3.2:1',
    },
  ],
  laws: {
    'one mark less on the fill side doubles the ratio': (keySide, fillSide) =>
      near(run(keySide, fillSide / Math.SQRT2), 2 * run(keySide, fillSide)),
  },
  formula: '(key_side / fill_side)^2',
  run,
});
