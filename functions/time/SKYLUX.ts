import { define } from '../define.ts';
import { between, share } from '../domains.ts';
import type { In } from '../values.ts';

function run(altitude: In<'angle'>, cloud: In<'share'>): In<'illuminance'> {
  const sine = Math.sin((altitude * Math.PI) / 180);
  return (1 - cloud) * (800 + 15_500 * Math.sqrt(sine)) + cloud * (300 + 21_000 * sine);
}

export default define({
  name: 'SKYLUX',
  family: 'time',
  summary: 'Illuminance from the sky alone, without the sun, on a level plane in the open.',
  job: 'You plan a room that faces away from the sun and want to know what the sky sends in.',
  search: ['skylight', 'north light', 'overcast', 'shade', 'open sky', 'daylight'],
  parameters: [
    {
      name: 'altitude',
      quantity: 'angle',
      domain: between(0, 90),
      help: 'Altitude of the sun above level, as SUNALTITUDE gives it. Below the horizon see SUNLUX.',
    },
    {
      name: 'cloud',
      quantity: 'share',
      domain: share,
      default: 0,
      help: 'How much of the sky is covered: 0 for a clear one, 100 % for an overcast one.',
    },
  ],
  result: 'illuminance',
  alike: ['SUNLUX', 'SUNBEAMLUX', 'WINDOWLUX'],
  limits:
    'Good to about a stop. A mean sky: haze gives more, a deep blue sky less; broken cloud near the sun gives up to twice as much.',
  sources: [{ from: 'IES RP-21', at: 'horizontal sky illuminance A + B · sin^C' }],
  examples: [
    { args: [90], result: 16_300, why: 'clear, with the sun overhead: 800 + 15,500 lx' },
    { args: [30, 1], result: 10_800, why: 'overcast: 300 + half of 21,000 lx' },
    { args: [0, 0], result: 800, why: 'clear, with the sun at the horizon' },
  ],
  laws: {
    'a higher sun gives more': (altitude, cloud) =>
      altitude > 89 || run(altitude + 1, cloud) > run(altitude, cloud),
  },
  formula:
    '(1 - cloud) * (800 + 15500 * SQRT(SIN(RADIANS(altitude)))) + cloud * (300 + 21000 * SIN(RADIANS(altitude)))',
  run,
});
