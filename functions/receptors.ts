/**
 * Incident calibration constant C of each receptor, lx·s·ISO.
 * ISO 2720:1974, 6.2 gives 240 to 400 for a flat (cosine) receptor and 320 to 540 for a
 * hemispherical one; 250 and 340 are the values most meters use (common practice).
 */
export const receptors: ReadonlyMap<string, number> = new Map([
  ['dome', 340],
  ['flat', 250],
]);
