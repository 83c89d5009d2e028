import { define } from '../define.ts';
import { onSet, sampled, any, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import { panelFactor } from './panel.ts';
import type { In } from '../values.ts';

function run(
  luminance: In<'luminance'>,
  width: In<'length'>,
  height: In<'length'>,
  distance: In<'length'>,
  across: In<'length'>,
  up: In<'length'>,
) {
  return luminance * panelFactor(width, height, distance, across, up);
}

const offset = sampled(any, -10, 10);

export default define({
  name: 'PANELLUX',
  family: 'distance',
  summary: 'Illuminance from an evenly lit rectangle, anywhere in front of it.',
  job: 'You know how bright a soft source is and want to know what it gives at the subject, close by or to the side.',
  search: [
    'soft source',
    'frame',
    'window',
    'large source',
    'diffusion frame',
    'screen',
    'wall of light',
  ],
  parameters: [
    {
      name: 'luminance',
      quantity: 'luminance',
      domain: zeroOrMore,
      help: 'Of the face, the same all over.',
    },
    { name: 'width', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    { name: 'height', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'Square out from the face or the diffusion, not from the lamp behind.',
    },
    {
      name: 'across',
      quantity: 'length',
      domain: offset,
      default: 0,
      help: 'Subject sideways from the middle of the face.',
    },
    {
      name: 'up',
      quantity: 'length',
      domain: offset,
      default: 0,
      help: 'Subject above the middle of the face.',
    },
  ],
  result: 'illuminance',
  alike: ['PANELLUMINANCE', 'PANELDISTANCE', 'INVERSESQUAREERROR', 'DISCLUX', 'BOUNCELUX'],
  limits:
    'Exact for a matt (Lambertian) face, evenly lit, and a receiver parallel to it. Not for lensed, gridded or shiny faces.',
  sources: [{ from: 'configuration factors', at: 'element to parallel rectangle, four corners' }],
  examples: [
    {
      args: [1000, 1, 1, 1],
      result: (4000 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5),
      why: 'a square from as far as its side: four corners of 1/√5 · atan 1/√5',
    },
    {
      args: [1000, 1, 1, 1, 0.5, 0.5],
      result: (1000 * Math.atan(1 / Math.sqrt(2))) / Math.sqrt(2),
      why: 'in front of one corner, that corner alone',
    },
    { args: [0, 2, 1, 3], result: 0, why: 'a dark face gives nothing' },
  ],
  laws: {
    'turned on its side it gives the same': (luminance, width, height, distance, across, up) =>
      near(
        run(luminance, width, height, distance, across, up),
        run(luminance, height, width, distance, up, across),
      ),
    'two halves side by side are the whole': (luminance, width, height, distance, across, up) =>
      near(
        run(luminance, width / 2, height, distance, across - width / 4, up) +
          run(luminance, width / 2, height, distance, across + width / 4, up),
        run(luminance, width, height, distance, across, up),
      ),
    'twice the size from twice as far gives the same': (
      luminance,
      width,
      height,
      distance,
      across,
      up,
    ) =>
      near(
        run(luminance, 2 * width, 2 * height, 2 * distance, 2 * across, 2 * up),
        run(luminance, width, height, distance, across, up),
      ),
    'never more than at the face': (luminance, width, height, distance, across, up) =>
      run(luminance, width, height, distance, across, up) <= Math.PI * luminance * (1 + 1e-12),
  },
  formula: fourCorners(),
  run,
});

/** The four corners one by one: a rectangle from the axis out to (x, y), with its sign. */
function fourCorners(): string {
  const corner = (x: string, y: string) =>
    `${x} / SQRT(${x}^2 + distance^2) * ATAN(${y} / SQRT(${x}^2 + distance^2)) + ` +
    `${y} / SQRT(${y}^2 + distance^2) * ATAN(${x} / SQRT(${y}^2 + distance^2))`;
  const [left, right] = ['(across - width / 2)', '(across + width / 2)'];
  const [low, high] = ['(up - height / 2)', '(up + height / 2)'];
  return (
    `luminance / 2 * (${corner(right, high)} - (${corner(left, high)}) - ` +
    `(${corner(right, low)}) + ${corner(left, low)})`
  );
}
