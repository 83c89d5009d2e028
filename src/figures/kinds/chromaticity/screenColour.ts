import type { XY } from '../../../../functions/colour/chromaticity.ts';
import { coded, lightOnScreen, type Three } from '../../kit/screen.ts';

/** D65, the white of a screen (IEC 61966-2-1). */
const screenWhite: XY = { x: 0.3127, y: 0.329 };

const xyz = ({ x, y }: XY): Three => [x / y, 1, (1 - x - y) / y];

/**
 * About what a colour looks like on a screen to somebody adapted to a white: as bright as it goes,
 * what the screen cannot show cut off. `#rrggbb`.
 */
export function screenColour(colour: XY, white: XY = screenWhite): string {
  const linear = lightOnScreen(xyz(colour), xyz(white));
  const brightest = Math.max(...linear);
  return `#${linear.map((light) => byte(light / brightest)).join('')}`;
}

const byte = (light: number): string => coded(light).toString(16).padStart(2, '0');
