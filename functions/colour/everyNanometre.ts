/** The six nearest of these stand for the two samples that are missing beyond either end. */
const beyond = [
  [884, -1960, 3033, -2648, 1080, -180],
  [508, -540, 488, -367, 144, -24],
] as const;

/**
 * Samples every 5 nm turned into samples every 1 nm by Sprague’s interpolation, which CIE 167:2005
 * recommends: a fifth-degree curve through six neighbours.
 */
export function everyNanometre(samples: readonly number[]): readonly number[] {
  const before = beyond.map((weights) => weighted(weights, samples));
  const after = beyond.map((weights) => weighted(weights, samples.toReversed())).toReversed();
  const padded = [...before, ...samples, ...after];
  const between = samples.slice(1).flatMap((_, index) => {
    const powers = curve(padded.slice(index, index + 6));
    return [0, 0.2, 0.4, 0.6, 0.8].map((x) => powers.reduceRight((sum, a) => sum * x + a, 0));
  });
  return [...between, ...samples.slice(-1)];
}

function weighted(weights: readonly number[], samples: readonly number[]): number {
  return weights.reduce((sum, weight, index) => sum + weight * (samples[index] ?? 0), 0) / 209;
}

/** Coefficients of the curve between the third and the fourth of six samples, constant first. */
function curve(six: readonly number[]): readonly number[] {
  const rows = [
    [0, 0, 24, 0, 0, 0],
    [2, -16, 0, 16, -2, 0],
    [-1, 16, -30, 16, -1, 0],
    [-9, 39, -70, 66, -33, 7],
    [13, -64, 126, -124, 61, -12],
    [-5, 25, -50, 50, -25, 5],
  ];
  return rows.map(
    (row) => row.reduce((sum, weight, index) => sum + weight * (six[index] ?? 0), 0) / 24,
  );
}
