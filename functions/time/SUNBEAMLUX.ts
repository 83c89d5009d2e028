import { define } from '../define.ts';
import { above } from '../domains.ts';
import type { In } from '../values.ts';

function run(altitude: In<'angle'>): In<'illuminance'> {
  return 127_500 * Math.exp(-0.21 / Math.sin((altitude * Math.PI) / 180));
}

export default define({
  name: 'SUNBEAMLUX',
  family: 'time',
  summary: 'Illuminance from the sun alone on a surface that faces it, under a clear sky.',
  job: 'You want to know how bright the patch is that the sun throws through a window.',
  search: ['direct sun', 'sun patch', 'shaft of light', 'sunbeam', 'hard sun'],
  parameters: [
    {
      name: 'altitude',
      quantity: 'angle',
      domain: above(0, 90),
      help: 'Altitude of the sun above level, as SUNALTITUDE gives it.',
    },
  ],
  result: 'illuminance',
  alike: ['SUNLUX', 'SKYLUX', 'SUNIN', 'WINDOWLUX'],
  limits:
    'Good to about a stop for a clear sky, far worse within five degrees of the horizon. Glass takes its share; a level table gets the sine of the altitude of it.',
  sources: [{ from: 'IES RP-21', at: 'direct normal illuminance, clear: 127,500 · exp(−0.21 m)' }],
  examples: [
    {
      args: [90],
      result: 127_500 * Math.exp(-0.21),
      why: 'overhead it comes through one thickness of air',
    },
    {
      args: [30],
      result: 127_500 * Math.exp(-0.42),
      why: 'at 30° through two',
    },
  ],
  laws: {
    'a higher sun gives more': (altitude) => altitude > 89 || run(altitude + 1) > run(altitude),
    'never more than outside the air': (altitude) => run(altitude) < 127_500,
  },
  formula: '127500 * EXP(-0.21 / SIN(RADIANS(altitude)))',
  run,
});
