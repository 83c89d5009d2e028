import { define } from '../define.ts';
import { filterLoss, opticalDensity, sampled } from '../domains.ts';
import { near } from '../near.ts';
import { nearestBelow } from './kit.ts';
import type { In } from '../values.ts';

function run(stops: In<'stops'>, kit: readonly In<'density'>[] | undefined): In<'stops'> {
  return Math.max(0, stops - nearestBelow(stops, kit));
}

export default define({
  name: 'NDREST',
  family: 'filter',
  summary: 'Stops that remain after the ND filter that NDFOR picks.',
  job: 'You put in the nearest ND and want to know how much the iris or a dimmer still has to take.',
  search: ['ND', 'what remains', 'rest', 'iris', 'neutral density'],
  parameters: [
    { name: 'stops', quantity: 'stops', domain: filterLoss, help: 'Stops that must go.' },
    {
      name: 'kit',
      quantity: 'density',
      domain: sampled(opticalDensity, 0.3, 2.1),
      optional: true,
      range: true,
      repeats: true,
      help: 'Labels in the kit, 0.3 a stop; left out, 0.3 to 2.1 in steps of 0.3.',
    },
  ],
  result: 'stops',
  alike: ['NDFOR', 'STOPSDENSITY', 'FNUMBERAT'],
  limits: 'Nominal stops of the label; real filters differ from it by up to a tenth of a stop.',
  sources: [
    { from: 'common practice' },
    { from: 'neutral density tables', at: 'labels, 0.3 a stop' },
  ],
  examples: [
    { args: [4], result: 0, why: 'ND 1.2 takes all four' },
    { args: [2.5], result: 0.5, why: 'ND 0.6 takes two' },
    { args: [5, [0.3, 0.6, 1.2]], result: 1, why: 'this kit ends at four stops' },
  ],
  laws: {
    'filter and rest make up the stops': (stops, kit) =>
      near(run(stops, kit) + nearestBelow(stops, kit), stops, 1e-9),
  },
  formula: {
    none: 'It picks a filter from a kit.',
    equation: 'stops − the greatest label / 0.3 in the kit that is at most stops',
  },
  run,
});
