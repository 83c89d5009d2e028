import type { XY } from '../../../../functions/colour/chromaticity.ts';

type Three = readonly [number, number, number];
type Matrix = readonly [Three, Three, Three];

/** D65, the white of a screen (IEC 61966-2-1). */
const screenWhite: XY = { x: 0.3127, y: 0.329 };

/** Bradford’s cone responses, as ICC profiles adapt (ICC.1, annex E). */
const toCones: Matrix = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];
const fromCones: Matrix = [
  [0.9869929, -0.1470543, 0.1599627],
  [0.4323053, 0.5183603, 0.0492912],
  [-0.0085287, 0.0400428, 0.9684867],
];
/** XYZ to linear sRGB, IEC 61966-2-1. */
const toScreen: Matrix = [
  [3.2406, -1.5372, -0.4986],
  [-0.9689, 1.8758, 0.0415],
  [0.0557, -0.204, 1.057],
];

const times = (matrix: Matrix, [a, b, c]: Three): Three =>
  matrix.map(([x, y, z]) => x * a + y * b + z * c) as unknown as Three;

const xyz = ({ x, y }: XY): Three => [x / y, 1, (1 - x - y) / y];

/**
 * About what a colour looks like on a screen to somebody adapted to a white: as bright as it goes,
 * what the screen cannot show cut off. `#rrggbb`.
 */
export function screenColour(colour: XY, white: XY = screenWhite): string {
  const [from, to] = [times(toCones, xyz(white)), times(toCones, xyz(screenWhite))];
  const cones = times(toCones, xyz(colour)).map(
    (value, index) => (value * (to[index] ?? 1)) / (from[index] ?? 1),
  ) as unknown as Three;
  const linear = times(toScreen, times(fromCones, cones)).map((value) => Math.max(0, value));
  const brightest = Math.max(...linear);
  return `#${linear.map((value) => byte(value / brightest)).join('')}`;
}

function byte(linear: number): string {
  const value = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055;
  return Math.round(255 * value)
    .toString(16)
    .padStart(2, '0');
}
