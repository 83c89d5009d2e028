import { define } from '../define.ts';
import { filterLoss } from '../domains.ts';
import { near } from '../near.ts';
import { stopDensity } from './density.ts';
import type { In } from '../values.ts';

function run(stops: In<'stops'>): In<'density'> {
  return stops * stopDensity;
}

export default define({
  name: 'STOPSDENSITY',
  family: 'filter',
  summary: 'Density that loses so many stops.',
  job: 'You know how many stops must go and want the density that does it.',
  search: ['ND', 'neutral density', 'stops to density', 'which filter'],
  parameters: [{ name: 'stops', quantity: 'stops', domain: filterLoss, help: 'Stops lost.' }],
  result: 'density',
  alike: ['DENSITYSTOPS', 'STOPSTRANSMISSION', 'NDFOR'],
  limits:
    'The exact density: one stop is 0.30103, which labels round to 0.3. For the label see NDFOR.',
  sources: [{ from: 'ISO 5', at: 'density is −log10 of the transmittance' }],
  examples: [
    { args: [1], result: Math.log10(2), why: 'half of the light' },
    {
      args: ['3 1/3'],
      result: 1,
      why: 'three and a third stops are close to a tenth of the light',
      within: 0.0035,
    },
    { args: [0], result: 0, why: 'clear glass' },
  ],
  laws: {
    'the density loses those stops': (stops) => near(-Math.log2(10 ** -run(stops)), stops),
  },
  formula: 'stops * LOG10(2)',
  run,
});
