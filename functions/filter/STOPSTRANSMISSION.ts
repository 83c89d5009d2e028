import { define } from '../define.ts';
import { filterLoss } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(stops: In<'stops'>): In<'share'> {
  return 2 ** -stops;
}

export default define({
  name: 'STOPSTRANSMISSION',
  family: 'filter',
  summary: 'Share of the light that goes through what loses so many stops.',
  job: 'You want to look for a gel or a diffusion that loses so many stops.',
  search: ['per cent', 'gel', 'diffusion', 'stops to transmission'],
  parameters: [{ name: 'stops', quantity: 'stops', domain: filterLoss, help: 'Stops lost.' }],
  result: 'share',
  alike: ['TRANSMISSIONSTOPS', 'STOPSDENSITY', 'STOPFACTOR'],
  limits: 'Exact. Losses are positive: what adds light is not a filter.',
  sources: [{ from: 'ISO 5', at: 'transmittance' }],
  examples: [
    { args: [1], result: 0.5, why: 'one stop is half of the light' },
    { args: ['1/2'], result: Math.SQRT1_2, why: 'half a stop lets 71 % through' },
    { args: [0], result: 1, why: 'nothing lost' },
  ],
  laws: {
    'one stop more is half of it': (stops) => near(run(stops + 1), run(stops) / 2),
    'the share loses those stops': (stops) => near(-Math.log2(run(stops)), stops),
  },
  formula: '2^(-stops)',
  run,
});
