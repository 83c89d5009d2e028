import { define } from '../define.ts';
import { onSet, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';

function run(luminance: In<'luminance'>, diameter: In<'length'>, distance: In<'length'>) {
  const radius = diameter / 2;
  return (Math.PI * luminance * radius ** 2) / (radius ** 2 + distance ** 2);
}

export default define({
  name: 'DISCLUX',
  family: 'distance',
  summary: 'Illuminance from an evenly lit round face, straight in front of its middle.',
  job: 'You know how bright a round diffuser or lantern is and want to know what it gives at the subject.',
  search: ['round', 'lantern', 'octagon', 'soft source', 'beauty', 'disc'],
  parameters: [
    {
      name: 'luminance',
      quantity: 'luminance',
      domain: zeroOrMore,
      help: 'Of the face, the same all over.',
    },
    { name: 'diameter', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'From the face or the diffusion, not from the lamp behind.',
    },
  ],
  result: 'illuminance',
  alike: ['PANELLUX', 'INVERSESQUARE', 'FARFIELD'],
  limits:
    'A matt (Lambertian) face, evenly lit, subject on its axis. A round paper ball is close to it.',
  sources: [{ from: 'configuration factors', at: 'element to coaxial parallel disc' }],
  examples: [
    {
      args: [1000, 2, 1],
      result: 500 * Math.PI,
      why: 'as far as its radius, half of the light at the face',
    },
    { args: [1000, '1 m', '1 m'], result: 200 * Math.PI, why: 'as far as its diameter, a fifth' },
  ],
  laws: {
    'never more than at the face': (luminance, diameter, distance) =>
      run(luminance, diameter, distance) <= Math.PI * luminance,
    'twice the size from twice as far gives the same': (luminance, diameter, distance) =>
      near(run(luminance, 2 * diameter, 2 * distance), run(luminance, diameter, distance)),
    'far away it follows the inverse square law': (luminance, diameter) =>
      near(run(luminance, diameter, 1e5 * diameter), (luminance * Math.PI) / 4 / 1e10, 1e-9),
  },
  formula: 'PI() * luminance * (diameter / 2)^2 / ((diameter / 2)^2 + distance^2)',
  run,
});
