import { xyFromUV, type XY } from './chromaticity.ts';
import { locusPoint } from './planck.ts';

/** Chromaticity at a temperature on the Planckian locus, or `duv` across it, positive to green. */
export function planckXY(kelvin: number, duv = 0): XY {
  const { at, green } = locusPoint(kelvin);
  return xyFromUV({ u: at.u + duv * green.u, v: at.v + duv * green.v });
}
