import { define } from '../define.ts';
import { levelOrNone, lightLevel } from '../domains.ts';
import { near } from '../near.ts';

function run(key: number, fill: number) {
  return key / fill;
}

export default define({
  name: 'KEYFILLRATIO',
  family: 'stops',
  summary: 'Key over fill, each metered alone.',
  job: 'You switched the lights on one at a time and want what many crews call the ratio.',
  search: ['ratio', 'key to fill', 'one at a time', 'lamps alone', 'key fill'],
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
  alike: ['FKEYFILLRATIO', 'LIGHTINGRATIO', 'CONTRASTRATIO'],
  limits:
    'The camera sees less contrast than this where the fill reaches the key side too: see LIGHTINGRATIO.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [400, 100], result: 4, why: 'key four times the fill' },
    { args: ['11 fc', '4.4 fc'], result: 2.5, why: 'the unit falls out of a ratio' },
  ],
  laws: {
    'half the fill doubles the ratio': (key, fill) => near(run(key, fill / 2), 2 * run(key, fill)),
  },
  formula: 'key / fill',
  run,
});
