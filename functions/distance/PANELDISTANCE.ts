import { define } from '../define.ts';
import { light, onSet, sampled } from '../domains.ts';
import { near } from '../near.ts';
import { panelDistance, panelFactor } from './panel.ts';
import { isError, refuse, type FunctionError, type In } from '../values.ts';

function run(
  luminance: In<'luminance'>,
  width: In<'length'>,
  height: In<'length'>,
  wantedLux: In<'illuminance'>,
): In<'length'> | FunctionError {
  const atTheFace = Math.PI * luminance;
  if (wantedLux >= atTheFace) {
    return refuse(
      `PANELDISTANCE: a face of ${luminance} cd/m² gives at most ${atTheFace.toPrecision(4)} lx, close to it: wanted_lux must be less.`,
    );
  }
  return panelDistance(width, height, wantedLux / luminance);
}

export default define({
  name: 'PANELDISTANCE',
  family: 'distance',
  summary:
    'How far from an evenly lit rectangle the light is what is wanted, straight in front of it.',
  job: 'You know how bright a soft source is and want to know where it must stand.',
  search: ['how far', 'soft source', 'move the frame', 'closer', 'back off'],
  parameters: [
    {
      name: 'luminance',
      quantity: 'luminance',
      domain: sampled(light, 500, 50_000),
      help: 'Of the face, the same all over.',
    },
    { name: 'width', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    { name: 'height', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    {
      name: 'wanted_lux',
      quantity: 'illuminance',
      domain: sampled(light, 1, 2000),
      help: 'Reading that is wanted.',
    },
  ],
  result: 'length',
  alike: ['PANELLUX', 'PANELLUMINANCE', 'DISTANCEFOR'],
  limits:
    'A matt (Lambertian) face, evenly lit, subject on its axis; the distance is from the face. More than π times the luminance is given nowhere.',
  sources: [
    { from: 'configuration factors', at: 'element to parallel rectangle, solved for the distance' },
  ],
  examples: [
    {
      args: [1000, 1, 1, (4000 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5)],
      result: 1,
      why: 'what a square gives from as far as its side',
    },
    {
      args: [1000, 2, 2, (4000 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5)],
      result: 2,
      why: 'a face twice the size gives the same from twice as far',
    },
  ],
  laws: {
    'at that distance the wanted light arrives': (luminance, width, height, wantedLux) => {
      const distance = run(luminance, width, height, wantedLux);
      return isError(distance)
        ? wantedLux >= Math.PI * luminance
        : near(luminance * panelFactor(width, height, distance), wantedLux);
    },
    'nearer than the inverse square law says': (luminance, width, height, wantedLux) => {
      const distance = run(luminance, width, height, wantedLux);
      return isError(distance) || distance <= Math.sqrt((luminance * width * height) / wantedLux);
    },
  },
  formula: {
    none: 'The rectangle’s equation cannot be solved for the distance; it is found by halving.',
    equation: 'PANELLUX(luminance, width, height, distance) = wanted_lux',
  },
  run,
});
