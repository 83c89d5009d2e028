import { refuse, type FunctionError } from '../values.ts';
import { uvFromXY } from './chromaticity.ts';
import { coldest, hottest, nearestOnLocus, type Nearest } from './nearestOnLocus.ts';

/** Farther than this from the locus a colour temperature says nothing (CIE 15, 9.5; clause from memory). */
const farthest = 0.05;

/** Colour temperature and Duv of a chromaticity, or the sentence that refuses it. */
export function temperatureOf(name: string, x: number, y: number): Nearest | FunctionError {
  const nearest = nearestOnLocus(uvFromXY({ x, y }));
  if (nearest === undefined) {
    return refuse(
      `${name}: x ${x}, y ${y} has no colour temperature from ${coldest} to ${hottest} K.`,
    );
  }
  if (Math.abs(nearest.duv) <= farthest) return nearest;
  const hue = nearest.duv > 0 ? 'green' : 'magenta';
  return refuse(
    `${name}: x ${x}, y ${y} is too ${hue} for a colour temperature: Duv ${nearest.duv.toFixed(3)}, at most ${farthest} either way.`,
  );
}
