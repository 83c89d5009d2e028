import { define } from '../define.ts';
import { onSet, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { panelFactor } from './panel.ts';
import type { In } from '../values.ts';

function run(
  lux: In<'illuminance'>,
  width: In<'length'>,
  height: In<'length'>,
  distance: In<'length'>,
) {
  return lux / panelFactor(width, height, distance);
}

export default define({
  name: 'PANELLUMINANCE',
  family: 'distance',
  summary: 'How bright an evenly lit rectangle is that gives a reading straight in front of it.',
  job: 'You metered a soft source once and want to know its face, to say what it gives from anywhere else.',
  search: ['soft source', 'face', 'how bright', 'window', 'diffusion frame'],
  parameters: [
    {
      name: 'lux',
      quantity: 'illuminance',
      domain: zeroOrMore,
      help: 'Reading on the axis, of this source alone.',
    },
    { name: 'width', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    { name: 'height', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'From the face or the diffusion, not from the lamp behind.',
    },
  ],
  result: 'luminance',
  alike: ['PANELLUX', 'PANELDISTANCE', 'LUXCANDELA'],
  limits:
    'Exact for a matt (Lambertian) face, evenly lit, and a receiver parallel to it on its axis. Not for lensed, gridded or shiny faces.',
  sources: [
    {
      from: 'configuration factors',
      at: 'element to parallel rectangle, solved for the luminance',
    },
  ],
  examples: [
    {
      args: [1000, 1, 1, 1],
      result: (250 * Math.sqrt(5)) / Math.atan(1 / Math.sqrt(5)),
      why: 'a square from as far as its side: four corners of 1/√5 · atan 1/√5',
    },
    { args: ['0 lx', 2, 1, 3], result: 0, why: 'no light from a dark face' },
  ],
  laws: {
    'a face of that luminance gives the reading': (lux, width, height, distance) =>
      near(run(lux, width, height, distance) * panelFactor(width, height, distance), lux),
    'twice the reading, twice the luminance': (lux, width, height, distance) =>
      near(run(2 * lux, width, height, distance), 2 * run(lux, width, height, distance)),
  },
  formula:
    'lux / (2 * (width / SQRT(width^2 + 4 * distance^2) * ATAN(height / SQRT(width^2 + 4 * distance^2)) + ' +
    'height / SQRT(height^2 + 4 * distance^2) * ATAN(width / SQRT(height^2 + 4 * distance^2))))',
  run,
});
