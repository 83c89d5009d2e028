import { define } from '../define.ts';
import { any, sampled } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(losses: readonly In<'stops'>[]): In<'stops'> {
  return losses.reduce<number>((sum, loss) => sum + loss, 0);
}

export default define({
  name: 'FILTERSTACK',
  family: 'filter',
  summary: 'Stops lost in several filters one behind the other.',
  job: 'Gel, diffusion and scrim are all on one lamp, or several filters on the lens, and you want the whole loss.',
  search: ['stack', 'several filters', 'gel and diffusion', 'add up', 'total loss'],
  parameters: [
    {
      name: 'losses',
      quantity: 'stops',
      domain: sampled(any, 0, 6),
      range: true,
      repeats: true,
      help: 'Stops lost in each; empty cells are skipped.',
    },
  ],
  result: 'stops',
  alike: ['DENSITYSTOPS', 'TRANSMISSIONSTOPS', 'EIAFTER', 'DIFFUSIONLOSS'],
  limits:
    'Stops add where each filter passes its share of whatever comes; two coloured gels together can lose more than both alone.',
  sources: [{ from: 'ISO 5', at: 'densities in a row add' }],
  examples: [
    { args: [[1, 0.5, 2]], result: 3.5, why: 'stops add' },
    { args: [[1, null, 2]], result: 3, why: 'an empty cell is no filter' },
  ],
  laws: {
    'one filter more adds its loss': (losses) => near(run([...losses, 1]), run(losses) + 1),
  },
  formula: 'SUM(losses)',
  run,
});
