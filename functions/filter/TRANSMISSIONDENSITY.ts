import { define } from '../define.ts';
import { passing } from '../domains.ts';
import { near } from '../near.ts';
import { transmissionOf } from './density.ts';
import type { In } from '../values.ts';

function run(transmission: In<'share'>): In<'density'> {
  return -Math.log10(transmission);
}

export default define({
  name: 'TRANSMISSIONDENSITY',
  family: 'filter',
  summary: 'Density of what lets a share of the light through.',
  job: 'You metered with and without a filter, or have per cent, and want the density.',
  search: ['ND', 'per cent to density', 'measure a filter'],
  parameters: [
    {
      name: 'transmission',
      quantity: 'share',
      domain: passing,
      help: 'Share of the light that goes through.',
    },
  ],
  result: 'density',
  alike: ['DENSITYTRANSMISSION', 'TRANSMISSIONSTOPS', 'STOPSDENSITY'],
  limits: 'The measured density, not the label: half of the light is 0.30103.',
  sources: [{ from: 'ISO 5', at: 'density is −log10 of the transmittance' }],
  examples: [
    { args: [0.01], result: 2, why: 'a hundredth is density 2' },
    { args: ['50 %'], result: Math.log10(2), why: 'half of the light' },
  ],
  laws: {
    'the density lets that share through': (transmission) =>
      near(transmissionOf(run(transmission)), transmission),
  },
  formula: '-LOG10(transmission)',
  run,
});
