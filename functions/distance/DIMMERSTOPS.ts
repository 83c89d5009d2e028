import { define } from '../define.ts';
import { passing } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(share: In<'share'>): In<'stops'> {
  return -Math.log2(share);
}

export default define({
  name: 'DIMMERSTOPS',
  family: 'distance',
  summary: 'Stops lost when a lamp is dimmed to a share of its light.',
  job: 'The desk says 40 per cent of the light and you want it in stops.',
  search: ['dimmer', 'per cent', 'half', 'how much does it lose'],
  parameters: [
    { name: 'share', quantity: 'share', domain: passing, help: 'Share of the light that is left.' },
  ],
  result: 'stops',
  alike: ['DIMMERFOR', 'TRANSMISSIONSTOPS', 'FACTORSTOPS'],
  limits: 'A share of the light, not the value of a control channel: dimmer curves differ.',
  sources: [{ from: 'common practice' }],
  examples: [
    { args: [0.5], result: 1, why: 'half the light is one stop' },
    { args: ['12.5 %'], result: 3, why: 'an eighth of the light is three stops' },
    { args: [1], result: 0, why: 'at full nothing is lost' },
  ],
  laws: {
    'half of that share loses one stop more': (share) => near(run(share / 2), run(share) + 1),
  },
  formula: '-LN(share) / LN(2)',
  run,
});
