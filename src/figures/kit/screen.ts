import { observer1931 } from '../../../functions/data/observer1931.ts';
import type { Tristimulus } from '../../../functions/colour/observer.ts';

export type Three = readonly [number, number, number];
type Matrix = readonly [Three, Three, Three];

/** X, Y, Z of white D65 to linear light of a screen’s primaries: IEC 61966-2-1 (sRGB). */
const toScreen: Matrix = [
  [3.2404542, -1.5371385, -0.4985314],
  [-0.969266, 1.8760108, 0.041556],
  [0.0556434, -0.2040259, 1.0572252],
];
/** Cone-like responses in which one white is made another (Bradford), and back. */
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
const whiteOfScreen: Three = [0.95047, 1, 1.08883];

const times = (matrix: Matrix, [a, b, c]: Three): Three => {
  const [x, y, z] = matrix.map((row) => row[0] * a + row[1] * b + row[2] * c);
  return [x!, y!, z!];
};
const three = ({ X, Y, Z }: Tristimulus): Three => [X, Y, Z];

/** The curve between light and a screen’s code, 0 to 255: IEC 61966-2-1. */
export function coded(light: number): number {
  const kept = Math.min(1, Math.max(0, light));
  return Math.round(255 * (kept <= 0.0031308 ? 12.92 * kept : 1.055 * kept ** (1 / 2.4) - 0.055));
}

const written = (linear: Three): string => `rgb(${linear.map(coded).join(' ')})`;

/** Linear light of a screen’s primaries to an eye that is used to a white: that becomes the screen’s. */
export function lightOnScreen(colour: Three, white: Three): Three {
  const cones = times(toCones, colour);
  const adapted = times(toCones, white);
  const scale = times(toCones, whiteOfScreen);
  const [l, m, s] = cones.map((one, index) => (one * scale[index]!) / adapted[index]!);
  return times(toScreen, times(fromCones, [l!, m!, s!]));
}

/**
 * A colour under a light, as about any screen shows it to an eye that is used to that light. What a
 * screen cannot show is cut to what it can.
 */
export const screenColour = (colour: Tristimulus, white: Tristimulus): string =>
  written(lightOnScreen(three(colour), three(white)));

/**
 * The colour of one wavelength, as near as a screen comes: no screen has any of them, so each is
 * paled until it can be shown. Dark at both ends, as the eye is.
 */
export function wavelengthColour(nm: number): string {
  const [, x = 0, y = 0, z = 0] = observer1931[Math.round((nm - 360) / 5)] ?? [];
  const linear = times(toScreen, [x, y, z]);
  const pale = Math.max(0, -Math.min(...linear));
  return written(linear.map((light) => (light + pale) / brightest) as unknown as Three);
}

/** About the most that any channel comes to. */
const brightest = 2.6;
