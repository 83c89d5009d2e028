import { define } from '../define.ts';
import { share } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { luxOrNone } from './parameters.ts';

function run(lux: In<'illuminance'>, reflectance: In<'share'>) {
  return (reflectance * lux) / Math.PI;
}

export default define({
  name: 'LUMINANCEOF',
  family: 'exposure',
  summary: 'Luminance of a matte surface from the light that falls on it.',
  job: 'You know the lux on a wall and its paint, and want what the spot meter will read.',
  search: ['how bright is the wall', 'nits from lux', 'spot reading', 'reflected light', 'paint'],
  parameters: [
    { ...luxOrNone, help: 'Illuminance on the surface.' },
    {
      name: 'reflectance',
      quantity: 'share',
      domain: share,
      help: 'Share of the light that the surface sends back.',
    },
  ],
  result: 'luminance',
  alike: ['REFLECTANCEOF', 'GREYSTOPS', 'SPOTF', 'BOUNCELUX'],
  limits: 'For matte (Lambertian) surfaces; satin and gloss depend on where you stand.',
  sources: [{ from: 'CIE S 017', at: 'luminance of a Lambertian surface' }],
  examples: [
    { args: [100 * Math.PI, 0.5], result: 50, why: 'half of what a perfect white would send' },
    {
      args: ['100 fc', '18 %'],
      result: ((100 / 0.3048 ** 2) * 0.18) / Math.PI,
      why: 'a grey card in 100 footcandles is 18 footlamberts',
    },
  ],
  laws: {
    'twice the light, twice the luminance': (lux, reflectance) =>
      near(run(2 * lux, reflectance), 2 * run(lux, reflectance)),
    'black sends nothing back': (lux) => run(lux, 0) === 0,
  },
  formula: 'reflectance * lux / PI()',
  run,
});
