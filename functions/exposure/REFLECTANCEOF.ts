import { define } from '../define.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { luminanceOrNone, lux } from './parameters.ts';

function run(luminance: In<'luminance'>, lux: In<'illuminance'>) {
  return (Math.PI * luminance) / lux;
}

export default define({
  name: 'REFLECTANCEOF',
  family: 'exposure',
  summary: 'Reflectance of a matte surface from a spot reading and the light that falls on it.',
  job: 'On the recce you read a wall with the spot meter and with the incident meter and want to know how dark its paint is.',
  search: ['how dark is the wall', 'paint', 'reflectance', 'grey value', 'recce'],
  parameters: [
    luminanceOrNone,
    { ...lux, help: 'Illuminance on the surface, metered flat against it.' },
  ],
  result: 'share',
  alike: ['LUMINANCEOF', 'GREYSTOPS'],
  limits: 'For matte surfaces: over 100 % means a shine, or two readings of different places.',
  sources: [{ from: 'CIE S 017', at: 'luminance of a Lambertian surface' }],
  examples: [
    { args: [50, 100 * Math.PI], result: 0.5, why: 'half of what a perfect white would send' },
    {
      args: ['18 fL', '100 fc'],
      result: 0.18,
      why: 'in feet, reflectance is footlamberts over footcandles',
    },
  ],
  laws: {
    'twice the light on the same paint changes nothing': (luminance, lux) =>
      near(run(2 * luminance, 2 * lux), run(luminance, lux)),
    'the reflectance gives the luminance back': (luminance, lux) =>
      near((run(luminance, lux) * lux) / Math.PI, luminance),
  },
  formula: 'PI() * luminance / lux',
  run,
});
