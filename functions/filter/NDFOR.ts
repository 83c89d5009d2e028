import { define } from '../define.ts';
import { filterLoss, opticalDensity, sampled } from '../domains.ts';
import { labelOf, nearestBelow } from './kit.ts';
import type { In } from '../values.ts';

function run(stops: In<'stops'>, kit: readonly In<'density'>[] | undefined): string {
  const nominal = nearestBelow(stops, kit);
  return nominal > 0 ? labelOf(nominal) : 'none';
}

export default define({
  name: 'NDFOR',
  family: 'filter',
  summary:
    'Label of the ND filter in the kit that comes nearest to the stops without passing them.',
  job: 'You are so many stops over and want to know which ND goes in; NDREST is what the iris takes.',
  search: ['ND', 'neutral density', 'which filter', 'too bright', 'open up', 'window gel'],
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
  result: 'text',
  alike: ['NDREST', 'STOPSDENSITY', 'DENSITYSTOPS', 'EIAFTER'],
  limits: 'One filter of the kit. Says "none" when even the weakest takes too much.',
  sources: [
    { from: 'common practice' },
    { from: 'neutral density tables', at: 'labels, 0.3 a stop' },
  ],
  examples: [
    { args: [4], result: 'ND 1.2', why: 'four stops are ND 1.2', source: 'neutral density tables' },
    { args: [2.7], result: 'ND 0.6', why: 'ND 0.9 would pass it' },
    { args: [0.5], result: 'none', why: 'even ND 0.3 takes more than half a stop' },
    { args: [5, [0.3, 0.6, 1.2]], result: 'ND 1.2', why: 'the strongest in this kit' },
  ],
  laws: {
    'a stop more never asks for a weaker one': (stops, kit) =>
      nearestBelow(stops + 1, kit) >= nearestBelow(stops, kit),
  },
  formula: {
    none: 'It picks a label from a kit.',
    equation: 'the greatest label / 0.3 in the kit that is at most stops',
  },
  run,
});
