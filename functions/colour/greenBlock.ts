import { uvOf } from './chromaticity.ts';
import { observer, tristimulus } from './observer.ts';
import { locusPoint, planckian } from './planck.ts';

/** The green third of the spectrum in nanometres, where an ideal magenta filter takes away and the others do not. */
const greenThird = { from: 500, to: 600 };

/**
 * Times by which the green third of Planckian light is too strong (or too weak) when its
 * chromaticity lies `duv` across the locus. Closed, because chromaticity is a quotient of sums:
 * (P + h·G) lies at `duv` where h·(n·g) = duv·(p + h·s), g being the green third’s lever across
 * the locus, p and s the sums X + 15Y + 3Z of the whole and of the green third.
 */
export function greenSurplus(kelvin: number, duv: number): number {
  const { green: across } = locusPoint(kelvin);
  const whole = tristimulus((metres) => planckian(metres, kelvin));
  const third = tristimulus((metres, index) => inGreen(index) * planckian(metres, kelvin));
  const at = uvOf(whole);
  const sum = third.X + 15 * third.Y + 3 * third.Z;
  const lever = across.u * (4 * third.X - at.u * sum) + across.v * (6 * third.Y - at.v * sum);
  return 1 + (duv * (whole.X + 15 * whole.Y + 3 * whole.Z)) / (lever - duv * sum);
}

/** One inside, none outside, half at the two edges. */
function inGreen(index: number): number {
  const nanometres = Math.round((observer.wavelengths[index] ?? 0) * 1e9);
  const { from, to } = greenThird;
  if (nanometres === from || nanometres === to) return 0.5;
  return nanometres > from && nanometres < to ? 1 : 0;
}
