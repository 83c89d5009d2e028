import { define } from '../define.ts';
import { opticalDensity } from '../domains.ts';
import { near } from '../near.ts';
import { transmissionOf } from './density.ts';

export default define({
  name: 'DENSITYTRANSMISSION',
  family: 'filter',
  summary: 'Share of the light that a density lets through.',
  job: 'A filter is given as a density and you want to multiply a reading by what it passes.',
  search: ['ND', 'density to per cent', 'how much goes through'],
  parameters: [
    {
      name: 'density',
      quantity: 'density',
      domain: opticalDensity,
      help: 'A number is a measured density; "ND 0.6" is the label on a filter and means its nominal stops.',
    },
  ],
  result: 'share',
  alike: ['TRANSMISSIONDENSITY', 'DENSITYSTOPS', 'STOPSTRANSMISSION'],
  limits: 'A measured 0.3 passes 50.12 %, the label "ND 0.3" counts as exactly half.',
  sources: [{ from: 'ISO 5', at: 'density is −log10 of the transmittance' }],
  examples: [
    { args: [2], result: 0.01, why: 'density 2 passes a hundredth' },
    {
      args: ['ND 0.3'],
      result: 0.5,
      why: 'the label means one stop',
      source: 'neutral density tables',
    },
    { args: [0], result: 1, why: 'clear glass' },
  ],
  laws: {
    'filters in a row multiply': (density) =>
      near(transmissionOf(density) * transmissionOf(1), transmissionOf(density + 1)),
  },
  formula: '10^(-density)',
  run: (density) => transmissionOf(density),
});
