import { define } from '../define.ts';
import { onSet } from '../domains.ts';
import { near } from '../near.ts';
import { panelFactor } from './panel.ts';
import type { In } from '../values.ts';

function run(width: In<'length'>, height: In<'length'>, distance: In<'length'>) {
  return Math.log2((width * height) / distance ** 2 / panelFactor(width, height, distance));
}

export default define({
  name: 'INVERSESQUAREERROR',
  family: 'distance',
  summary:
    'Stops by which the inverse square law promises too much (+) for a rectangle at a distance.',
  job: 'You used the inverse square law with a soft source close by and want to know how wrong that is.',
  search: ['five times rule', 'how wrong', 'soft source', 'close by', 'inverse square'],
  parameters: [
    { name: 'width', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    { name: 'height', quantity: 'length', domain: onSet, help: 'Of the lit face.' },
    { name: 'distance', quantity: 'length', domain: onSet, help: 'From the face, on its axis.' },
  ],
  result: 'stops',
  alike: ['PANELLUX', 'FARFIELD', 'INVERSESQUARE'],
  limits: 'For a matt (Lambertian) face, evenly lit, on its axis.',
  sources: [
    {
      from: 'configuration factors',
      at: 'element to parallel rectangle, against the photometric distance law',
    },
  ],
  examples: [
    {
      args: [1, 1, 1],
      result: Math.log2(Math.sqrt(5) / 4 / Math.atan(1 / Math.sqrt(5))),
      why: 'a square from as far as its side: 1 against 4/√5 · atan 1/√5',
    },
    { args: [1, 1, 1e6], result: 0, why: 'very far away it is right', within: 1e-11 },
  ],
  laws: {
    'it always promises too much': (width, height, distance) =>
      run(width, height, distance) > -1e-12,
    'only the proportions count': (width, height, distance) =>
      near(run(2 * width, 2 * height, 2 * distance), run(width, height, distance)),
    'farther away it is less wrong': (width, height, distance) =>
      run(width, height, 2 * distance) <= run(width, height, distance) + 1e-12,
  },
  formula:
    'LN(width * height / distance^2 / (2 * (width / SQRT(width^2 + 4 * distance^2) * ATAN(height / SQRT(width^2 + 4 * distance^2)) + ' +
    'height / SQRT(height^2 + 4 * distance^2) * ATAN(width / SQRT(height^2 + 4 * distance^2))))) / LN(2)',
  run,
});
