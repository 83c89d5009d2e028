import { define } from '../define.ts';
import { opticalDensity } from '../domains.ts';
import { near } from '../near.ts';
import { stopDensity } from './density.ts';
import type { In } from '../values.ts';

function run(density: In<'density'>): In<'stops'> {
  return density / stopDensity;
}

export default define({
  name: 'DENSITYSTOPS',
  family: 'filter',
  summary: 'Stops lost in a density.',
  job: 'A filter or a patch is given as a density and you want it in stops.',
  search: ['ND', 'neutral density', 'filter loss', 'density to stops'],
  parameters: [
    {
      name: 'density',
      quantity: 'density',
      domain: opticalDensity,
      help: 'A number is a measured density; "ND 0.6" is the label on a filter and means its nominal stops.',
    },
  ],
  result: 'stops',
  alike: ['STOPSDENSITY', 'TRANSMISSIONSTOPS', 'NDFOR'],
  limits:
    'One stop is a density of 0.30103, not 0.3: a measured 0.3 loses 0.99658 stop, the label "ND 0.3" counts as one. Real filters differ from their label by up to a tenth of a stop.',
  sources: [
    { from: 'ISO 5', at: 'density is −log10 of the transmittance' },
    { from: 'neutral density tables', at: 'labels' },
  ],
  examples: [
    {
      args: ['ND 0.6'],
      result: 2,
      why: 'the label means two stops',
      source: 'neutral density tables',
    },
    { args: [0.3], result: 0.3 / Math.log10(2), why: 'the density itself loses 0.99658 stop' },
    { args: [3 * Math.log10(2)], result: 3, why: 'an eighth of the light' },
  ],
  laws: {
    'filters in a row add up': (density) => near(run(density) + run(1), run(density + 1)),
    'a stop more is log10 2 more': (density) =>
      near(run(density + Math.log10(2)), run(density) + 1),
  },
  formula: 'density / LOG10(2)',
  run,
});
