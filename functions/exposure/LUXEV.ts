import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { flatReceptor, lux } from './parameters.ts';

function run(lux: In<'illuminance'>, constant: number) {
  return Math.log2((lux * 100) / constant);
}

export default define({
  name: 'LUXEV',
  family: 'exposure',
  summary: 'Exposure value at ISO 100 of an illuminance.',
  job: 'You have lux and want the EV that an incident meter would show.',
  search: ['lux to exposure value', 'how bright', 'light value', 'convert lux'],
  parameters: [lux, flatReceptor],
  result: 'ev',
  alike: ['EVLUX', 'LUMINANCEEV', 'INCIDENTF'],
  limits: 'Flat unless a receptor is given: a dome shows 0.44 less for the same lux.',
  sources: [
    {
      from: 'ISO 2720',
      at: 'exposure equations; C of 240 to 400 flat, 320 to 540 dome, from memory',
    },
    { from: 'exposure value table' },
  ],
  examples: [
    { args: [20], result: 3, why: 'printed: 20 lx at EV 3', source: 'exposure value table' },
    {
      args: ['951 fc'],
      result: 12,
      why: 'printed: 951 footcandles at EV 12',
      source: 'exposure value table',
      within: 0.001,
    },
    { args: [3.4, 'dome'], result: 0, why: 'a dome has C = 340' },
  ],
  laws: {
    'twice the light is one EV more': (lux, constant) =>
      near(run(2 * lux, constant), run(lux, constant) + 1),
  },
  formula: 'LN(lux * 100 / receptor) / LN(2)',
  run,
});
