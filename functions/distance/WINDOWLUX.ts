import { define } from '../define.ts';
import { any, onSet, sampled, share, zeroOrMore } from '../domains.ts';
import { near } from '../near.ts';
import type { In } from '../values.ts';
import { panelFactor } from './panel.ts';

function run(
  sky: In<'illuminance'>,
  width: In<'length'>,
  height: In<'length'>,
  distance: In<'length'>,
  across: In<'length'>,
  up: In<'length'>,
  glass: In<'share'>,
  ground: In<'share'>,
): In<'illuminance'> {
  const [bottom, top] = [-height / 2 - up, height / 2 - up];
  /** What the part of the opening between two levels gives, the mark’s own level being 0. */
  const part = (from: number, to: number) =>
    to > from ? panelFactor(width, to - from, distance, across, -(from + to) / 2) : 0;
  const seen =
    part(Math.max(0, bottom), Math.max(0, top)) +
    ground * part(Math.min(0, bottom), Math.min(0, top));
  return (sky / Math.PI) * glass * seen;
}

const offset = sampled(any, -10, 10);

export default define({
  name: 'WINDOWLUX',
  family: 'distance',
  summary: 'Daylight from the sky through a window at a mark in the room, without direct sun.',
  job: 'You stand at the recce and want to know what the window gives where somebody will sit.',
  search: ['daylight', 'window light', 'north light', 'interior', 'sky through a window'],
  parameters: [
    {
      name: 'sky',
      quantity: 'illuminance',
      domain: sampled(zeroOrMore, 0, 25_000),
      help: 'On a level plane in the open from the sky alone: SKYLUX, or a reading with the sun shaded off.',
    },
    { name: 'width', quantity: 'length', domain: onSet, help: 'Of the clear opening.' },
    { name: 'height', quantity: 'length', domain: onSet, help: 'Of the clear opening.' },
    {
      name: 'distance',
      quantity: 'length',
      domain: onSet,
      help: 'Square out from the window to the mark.',
    },
    {
      name: 'across',
      quantity: 'length',
      domain: offset,
      default: 0,
      help: 'Mark sideways from the middle of the window.',
    },
    {
      name: 'up',
      quantity: 'length',
      domain: offset,
      default: 0,
      help: 'Mark above the middle of the window; below is negative.',
    },
    {
      name: 'glass',
      quantity: 'share',
      domain: share,
      default: 0.8,
      help: 'Share of the light that the glass lets through: about 80 % clean and double, less dirty.',
    },
    {
      name: 'ground',
      quantity: 'share',
      domain: share,
      default: 0.2,
      help: 'Share of the light that ground and houses outside send back; snow 80 %.',
    },
  ],
  result: 'illuminance',
  alike: ['SKYLUX', 'PANELLUX', 'SUNBEAMLUX', 'SUNIN'],
  limits:
    'Good to about a stop: the sky the same all over, ground below the level of the mark, a flat receptor that faces the window. Sun, what stands opposite and what the room sends back are not reckoned.',
  sources: [{ from: 'configuration factors', at: 'element to parallel rectangle, four corners' }],
  examples: [
    {
      args: [Math.PI * 1000, 2, 2, 1, 0, -1, 1, 0.2],
      result:
        1000 *
        (Math.atan(Math.SQRT2) / Math.SQRT2 + (2 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5)),
      why: 'level with the sill all of it is sky of 1000 cd/m²',
    },
    {
      args: [Math.PI * 1000, 1, 1, 1, 0, 0, 1, 1],
      result: (4000 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5),
      why: 'ground as bright as the sky: a lit square from as far as its side',
    },
    {
      args: [Math.PI * 1000, 1, 1, 1],
      result: ((4000 * Math.atan(1 / Math.sqrt(5))) / Math.sqrt(5)) * 0.8 * 0.6,
      why: 'half of it sky, half ground at a fifth, through glass of 80 %',
    },
  ],
  laws: {
    'twice the sky gives twice as much': (sky, width, height, distance, ...rest) =>
      near(
        run(2 * sky, width, height, distance, ...rest),
        2 * run(sky, width, height, distance, ...rest),
      ),
    'ground as bright as the sky makes it one lit face': (
      sky,
      width,
      height,
      distance,
      across,
      up,
      glass,
    ) =>
      near(
        run(sky, width, height, distance, across, up, glass, 1),
        (sky / Math.PI) * glass * panelFactor(width, height, distance, across, up),
      ),
    'never more than half the open sky through it': (
      sky,
      width,
      height,
      distance,
      across,
      up,
      glass,
      ground,
    ) =>
      run(sky, width, height, distance, across, up, glass, Math.min(1, ground)) <=
      sky * (1 + 1e-12),
  },
  formula: `sky / PI() * glass / 2 * (${rectangle('MAX')} + ground * (${rectangle('MIN')}))`,
  run,
});

/** The part above the mark’s level (`MAX`) or below it (`MIN`), corner by corner as in PANELLUX. */
function rectangle(half: 'MAX' | 'MIN'): string {
  const corner = (x: string, y: string) =>
    `${x} / SQRT(${x}^2 + distance^2) * ATAN(${y} / SQRT(${x}^2 + distance^2)) + ` +
    `${y} / SQRT(${y}^2 + distance^2) * ATAN(${x} / SQRT(${y}^2 + distance^2))`;
  const [left, right] = ['(across - width / 2)', '(across + width / 2)'];
  const [low, high] = [`${half}(0, -height / 2 - up)`, `${half}(0, height / 2 - up)`];
  return (
    `${corner(right, high)} - (${corner(left, high)}) - ` +
    `(${corner(right, low)}) + ${corner(left, low)}`
  );
}
