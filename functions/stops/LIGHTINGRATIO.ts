import { define } from '../define.ts';
import { levelOrNone, lightLevel } from '../domains.ts';
import { near } from '../near.ts';

function run(key: number, fill: number) {
  return (key + fill) / fill;
}

export default define({
  name: 'LIGHTINGRATIO',
  family: 'stops',
  summary: 'Key plus fill over fill, from lights metered one at a time.',
  job: 'You metered key and fill alone and want the contrast of the face when both are on.',
  search: ['ratio', 'key plus fill', 'one at a time', 'contrast', 'both on'],
  parameters: [
    {
      name: 'key',
      quantity: 'level',
      domain: levelOrNone,
      help: 'The key alone, all else off.',
    },
    {
      name: 'fill',
      quantity: 'level',
      domain: lightLevel,
      help: 'The fill alone, all else off, in the same unit.',
    },
  ],
  result: 'ratio',
  alike: ['FLIGHTINGRATIO', 'KEYFILLRATIO', 'CONTRASTRATIO'],
  limits:
    'True when the fill reaches the key side as much as the shadow side, as from beside the camera.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [400, 100], result: 5, why: 'the lit side has key and fill, the other fill only' },
    { args: [0, 100], result: 1, why: 'no key: both sides alike' },
  ],
  laws: {
    'always one more than key over fill': (key, fill) => near(run(key, fill), key / fill + 1),
  },
  formula: '(key + fill) / fill',
  run,
});
