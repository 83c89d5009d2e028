import { define } from '../define.ts';
import { countFromOne } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { mains } from './parameters.ts';

function run(mains: In<'frequency'>, n: number) {
  return n / (2 * mains);
}

export default define({
  name: 'FLICKERTIME',
  family: 'time',
  summary: 'Exposure time that is open for whole pulses of mains light.',
  job: 'House fixtures flicker in the picture and you want a shutter that does not see it.',
  search: ['flicker', 'safe shutter', 'clean shutter speed', 'mains', '50 hertz', 'banding'],
  parameters: [
    mains,
    {
      name: 'n',
      quantity: 'number',
      domain: countFromOne,
      default: 1,
      help: 'How many pulses the shutter is open for; one unless given.',
    },
  ],
  result: 'time',
  alike: ['FLICKERANGLE', 'FLICKERCHECK', 'FLICKERRESIDUE'],
  limits: 'For light that follows the mains. Dimmed and cheap LED may pulse at a rate of its own.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [50], result: 0.01, why: 'one pulse at 50 Hz is 1/100 s' },
    { args: ['60 Hz', 2], result: 1 / 60, why: 'two pulses at 60 Hz' },
  ],
  laws: {
    'twice the pulses, twice the time': (mains, n) => near(run(mains, 2 * n), 2 * run(mains, n)),
  },
  formula: 'n / (2 * mains)',
  run,
});
