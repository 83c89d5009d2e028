/** Density of one nominal stop: half of the light is log10 2, which labels round to 0.3 (ISO 5: D = −log10 τ). */
export const stopDensity = Math.log10(2);

/** Share of the light that a density lets through. */
export const transmissionOf = (density: number): number => 10 ** -density;
