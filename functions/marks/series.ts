/** How finely a scale of f-numbers is cut: whole, half or third stops. */
export type Parts = 1 | 2 | 3;

export interface Mark {
  /** What is engraved: a rounded name. */
  readonly nominal: number;
  /** What it stands for: a power of the square root of two. */
  readonly exact: number;
}

// Aperture value (whole stops from f/1) of the first mark of each series, f/0.7.
export const firstStop = -1;

/** Engraved names from f/0.7 on; ISO 517 for whole stops and thirds, common practice for halves. */
const names: Readonly<Record<Parts, readonly number[]>> = {
  1: [0.7, 1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32, 45, 64, 90, 128, 180, 256],
  2: [
    0.7, 0.8, 1, 1.2, 1.4, 1.7, 2, 2.4, 2.8, 3.3, 4, 4.8, 5.6, 6.7, 8, 9.5, 11, 13, 16, 19, 22, 27,
    32, 38, 45, 54, 64, 76, 90, 107, 128,
  ],
  3: [
    0.7, 0.8, 0.9, 1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1,
    8, 9, 10, 11, 13, 14, 16, 18, 20, 22, 25, 29, 32, 36, 40, 45, 51, 57, 64, 72, 80, 90, 102, 114,
    128,
  ],
};

/** The mark `stops` whole stops from f/1 (halves, thirds and tenths allowed): 2^(stops/2). */
export function exactAt(stops: number): number {
  return 2 ** (stops / 2);
}

function series(parts: Parts): readonly Mark[] {
  return names[parts].map((nominal, step) => ({
    nominal,
    exact: exactAt(firstStop + step / parts),
  }));
}

export const marks: Readonly<Record<Parts, readonly Mark[]>> = {
  1: series(1),
  2: series(2),
  3: series(3),
};
