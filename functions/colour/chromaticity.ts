import type { Tristimulus } from './observer.ts';

/** Chromaticity x, y of the CIE 1931 observer. */
export interface XY {
  readonly x: number;
  readonly y: number;
}

/** CIE 1960 u, v: the plane in which colour temperature and Duv are measured. */
export interface UV {
  readonly u: number;
  readonly v: number;
}

export function uvOf({ X, Y, Z }: Tristimulus): UV {
  const sum = X + 15 * Y + 3 * Z;
  return { u: (4 * X) / sum, v: (6 * Y) / sum };
}

export function uvFromXY({ x, y }: XY): UV {
  const sum = -2 * x + 12 * y + 3;
  return { u: (4 * x) / sum, v: (6 * y) / sum };
}

export function xyFromUV({ u, v }: UV): XY {
  const sum = 2 * u - 8 * v + 4;
  return { x: (3 * u) / sum, y: (2 * v) / sum };
}
