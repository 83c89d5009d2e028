import { uvFromXY, type UV, type XY } from './chromaticity.ts';

/** CIE 1976 u′, v′: those of 1960 with v half as large again. */
export function primeFromXY(xy: XY): UV {
  const { u, v } = uvFromXY(xy);
  return { u, v: 1.5 * v };
}
