import { define } from '../define.ts';
import { any, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { flatReceptor } from './parameters.ts';

function run(ev: In<'ev'>, constant: number) {
  return (2 ** ev * constant) / 100;
}

export default define({
  name: 'EVLUX',
  family: 'exposure',
  summary: 'Illuminance of an exposure value at ISO 100.',
  job: 'A table or an incident meter gives EV and you want lux.',
  search: ['exposure value to lux', 'meter reading', 'how much light', 'convert EV'],
  parameters: [
    {
      name: 'ev',
      quantity: 'ev',
      domain: sampled(any, -6, 20),
      help: 'Exposure value at ISO 100, from an incident meter.',
    },
    flatReceptor,
  ],
  result: 'illuminance',
  alike: ['LUXEV', 'EVLUMINANCE', 'EV'],
  limits: 'Flat unless a receptor is given: a dome needs 0.44 stop more lux for the same EV.',
  sources: [
    {
      from: 'ISO 2720',
      at: 'exposure equations; C of 240 to 400 flat, 320 to 540 dome, from memory',
    },
    { from: 'exposure value table' },
  ],
  examples: [
    { args: [0], result: 2.5, why: 'printed: 2.5 lx', source: 'exposure value table' },
    { args: [12], result: 10240, why: 'printed: 10 240 lx', source: 'exposure value table' },
    { args: [0, 'dome'], result: 3.4, why: 'a dome has C = 340' },
  ],
  laws: {
    'one EV more is twice the light': (ev, constant) =>
      near(run(ev + 1, constant), 2 * run(ev, constant)),
  },
  formula: '2^ev * receptor / 100',
  run,
});
