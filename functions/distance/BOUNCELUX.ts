import { define } from '../define.ts';
import { onSet, share, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { panelFactor } from './panel.ts';
import type { In } from '../values.ts';

function run(
  lux: In<'illuminance'>,
  reflectance: In<'share'>,
  width: In<'length'>,
  height: In<'length'>,
  distance: In<'length'>,
) {
  return ((reflectance * lux) / Math.PI) * panelFactor(width, height, distance);
}

export default define({
  name: 'BOUNCELUX',
  family: 'distance',
  summary: 'Illuminance that a lit white board or cloth sends back, straight in front of it.',
  job: 'You bounce a lamp off a board and want to know what comes back to the subject.',
  search: ['bounce', 'reflector', 'white board', 'poly', 'ceiling', 'fill'],
  parameters: [
    {
      name: 'lux',
      quantity: 'illuminance',
      domain: zeroOrMore,
      help: 'On the board, the same all over.',
    },
    {
      name: 'reflectance',
      quantity: 'share',
      domain: share,
      help: 'Share of light the board sends back.',
    },
    { name: 'width', quantity: 'length', domain: onSet, help: 'Of the lit part of the board.' },
    { name: 'height', quantity: 'length', domain: onSet, help: 'Of the lit part of the board.' },
    { name: 'distance', quantity: 'length', domain: onSet, help: 'Board to subject.' },
  ],
  result: 'illuminance',
  alike: ['PANELLUX', 'LUMINANCEOF', 'INVERSESQUARE'],
  limits:
    'A matt (Lambertian) board, evenly lit, facing the subject. Silver and gold boards throw a beam instead.',
  sources: [
    { from: 'CIE S 017', at: 'Lambertian surface: luminance ρE/π' },
    { from: 'configuration factors', at: 'element to parallel rectangle' },
  ],
  examples: [
    {
      args: ['1000 lx', '80 %', 1, 1, 1],
      result: (3200 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5) / Math.PI,
      why: 'a square board from as far as its side: four corners of 1/√5 · atan 1/√5',
    },
    { args: [1000, 0, 1, 1, 1], result: 0, why: 'black sends nothing back' },
  ],
  laws: {
    'never more than the board gets': (lux, reflectance, width, height, distance) =>
      run(lux, reflectance, width, height, distance) <= lux * (1 + 1e-12),
    'twice the light on the board, twice the light back': (
      lux,
      reflectance,
      width,
      height,
      distance,
    ) =>
      near(
        run(2 * lux, reflectance, width, height, distance),
        2 * run(lux, reflectance, width, height, distance),
      ),
  },
  formula:
    'reflectance * lux / PI() * 2 * (width / SQRT(width^2 + 4 * distance^2) * ATAN(height / SQRT(width^2 + 4 * distance^2)) + ' +
    'height / SQRT(height^2 + 4 * distance^2) * ATAN(width / SQRT(height^2 + 4 * distance^2)))',
  run,
});
