import { define } from '../define.ts';
import { any, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { constant } from './parameters.ts';

function run(ev: In<'ev'>, constant: number) {
  return (2 ** ev * constant) / 100;
}

export default define({
  name: 'EVLUMINANCE',
  family: 'exposure',
  summary: 'Luminance of an exposure value at ISO 100.',
  job: 'A spot meter shows EV and you want candela per square metre.',
  search: ['exposure value to nits', 'spot meter', 'convert EV', 'how bright is the wall'],
  parameters: [
    {
      name: 'ev',
      quantity: 'ev',
      domain: sampled(any, -6, 20),
      help: 'Exposure value at ISO 100, from a spot meter.',
    },
    constant,
  ],
  result: 'luminance',
  alike: ['LUMINANCEEV', 'EVLUX', 'EV'],
  limits: 'Meters differ in their constant K: 12.5 and 14 are both in use, 0.16 EV apart.',
  sources: [
    { from: 'ISO 2720', at: 'exposure equations; K of 10.6 to 13.4, from memory' },
    { from: 'exposure value table' },
  ],
  examples: [
    { args: [3], result: 1, why: 'printed: 1 cd/m²', source: 'exposure value table' },
    { args: [15], result: 4096, why: 'printed: 4 096 cd/m²', source: 'exposure value table' },
  ],
  laws: {
    'one EV more is twice the light': (ev, constant) =>
      near(run(ev + 1, constant), 2 * run(ev, constant)),
  },
  formula: '2^ev * constant / 100',
  run,
});
