/** Thirty bands of 10 nm, the first about 380 nm, the last about 670 (SMPTE ST 2122). */
const bands = 30;
const firstEdge = 375;
const width = 10;

/** How much each band counts: less at the ends of what is seen (SMPTE ST 2122). */
const weights = [
  ...[12 / 45, 22 / 45, 32 / 45, 40 / 45, 44 / 45],
  ...Array.from({ length: 23 }, () => 1),
  ...[11 / 15, 3 / 15],
];

/** A band’s neighbours blur it by a quarter either way, nearly (SMPTE ST 2122). */
const blur = [0.22, 0.56, 0.22] as const;

/** Whole nanometres of a band summed by the trapezium rule, all bands to a sum of 1. */
function shares(power: (nm: number) => number): readonly number[] {
  const sums = Array.from({ length: bands }, (_, band) => {
    const from = firstEdge + band * width;
    let sum = (power(from) + power(from + width)) / 2;
    for (let nm = from + 1; nm < from + width; nm += 1) sum += power(nm);
    return sum;
  });
  const whole = sums.reduce((sum, one) => sum + one, 0);
  return sums.map((sum) => sum / whole);
}

/**
 * Spectral similarity index of a light and its reference, 100 for the same shape: SMPTE ST 2122,
 * before the rounding to a whole number that the standard asks for in reports.
 */
export function similarity(
  test: (nm: number) => number,
  reference: (nm: number) => number,
): number {
  const wanted = shares(reference);
  const differences = shares(test).map((share, band) => {
    const relative = (share - wanted[band]!) / (wanted[band]! + 1 / bands);
    return relative * weights[band]!;
  });
  const at = (band: number) => differences[band] ?? 0;
  let sum = 0;
  for (let band = -1; band <= bands; band += 1)
    sum += (blur[0] * at(band - 1) + blur[1] * at(band) + blur[2] * at(band + 1)) ** 2;
  return 100 - 32 * Math.sqrt(sum);
}
