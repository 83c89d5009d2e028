import { define } from '../define.ts';
import { stopReading, stopReadingOrNone } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(key: In<'fNumber'>, fill: In<'fNumber'>) {
  return (key ** 2 + fill ** 2) / fill ** 2;
}

export default define({
  name: 'FLIGHTINGRATIO',
  family: 'stops',
  summary: 'Key plus fill over fill from f-numbers, from lights metered one at a time.',
  job: 'You metered key and fill alone in f-numbers and want the contrast of the face when both are on.',
  search: ['ratio', 'key plus fill', 'one at a time', 'contrast', 'both on'],
  parameters: [
    {
      name: 'key',
      quantity: 'fNumber',
      domain: stopReadingOrNone,
      help: 'The key alone, all else off.',
    },
    {
      name: 'fill',
      quantity: 'fNumber',
      domain: stopReading,
      help: 'The fill alone, all else off.',
    },
  ],
  result: 'ratio',
  alike: ['LIGHTINGRATIO', 'FKEYFILLRATIO', 'FCONTRASTRATIO'],
  limits:
    'Both readings at one speed and time; true when the fill reaches the key side as much as the shadow side.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: ['f/5.6', 'f/2.8'], result: 5, why: 'four parts of key and one of fill over one' },
    { args: ['f/4', 'f/4'], result: 2, why: 'key and fill alike: one side has both' },
  ],
  laws: {
    'always one more than key over fill': (key, fill) =>
      near(run(key, fill), (key / fill) ** 2 + 1),
  },
  formula: '(key^2 + fill^2) / fill^2',
  run,
});
