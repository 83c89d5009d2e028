import { define } from '../define.ts';
import { passing } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(transmission: In<'share'>): In<'stops'> {
  return -Math.log2(transmission);
}

export default define({
  name: 'TRANSMISSIONSTOPS',
  family: 'filter',
  summary: 'Stops lost when only a share of the light goes through.',
  job: 'The swatch says how many per cent a gel or diffusion lets through and you want stops.',
  search: ['gel', 'diffusion', 'per cent', 'how much does it eat', 'light loss'],
  parameters: [
    {
      name: 'transmission',
      quantity: 'share',
      domain: passing,
      help: 'Share of the light that goes through.',
    },
  ],
  result: 'stops',
  alike: ['STOPSTRANSMISSION', 'DENSITYSTOPS', 'DIFFUSIONLOSS'],
  limits:
    'For light that goes straight through. Diffusion also spreads it: what the subject loses depends on beam and distance, so meter it with DIFFUSIONLOSS.',
  sources: [{ from: 'ISO 5', at: 'transmittance' }],
  examples: [
    { args: ['50 %'], result: 1, why: 'half of the light is one stop' },
    { args: [0.125], result: 3, why: 'an eighth is three stops' },
  ],
  laws: {
    'two of them lose twice as much': (transmission) =>
      near(run(transmission ** 2), 2 * run(transmission)),
  },
  formula: '-LN(transmission) / LN(2)',
  run,
});
