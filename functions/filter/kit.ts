import { stopDensity } from './density.ts';

/** The labels that most kits hold, and that NDFOR and NDREST take if no kit is given (common practice). */
const usualKit = [0.3, 0.6, 0.9, 1.2, 1.5, 1.8, 2.1];

/** Steps of half a third of a stop tell a label of 0.3 and a density cell of 0.30103 both as one stop. */
const finest = 6;

/**
 * Nominal stops of the filter in the kit that comes nearest to `stops` without passing it,
 * or 0 if each of them would. Labels count 0.3 a stop.
 */
export function nearestBelow(stops: number, kit: readonly number[] = usualKit): number {
  // A hair of grace: three stops reckoned as 2.9999999999 still get the filter of three.
  const fitting = kit.map(nominalStops).filter((nominal) => nominal <= stops + 1e-9);
  return Math.max(0, ...fitting);
}

function nominalStops(label: number): number {
  return Math.round((label / stopDensity) * finest) / finest;
}

/** The label that filter makers print: 0.3 a stop, "ND 0.6". */
export function labelOf(nominal: number): string {
  const label = Math.round(nominal * 0.3 * 100) / 100;
  return `ND ${Number.isInteger(label * 10) ? label.toFixed(1) : label}`;
}
