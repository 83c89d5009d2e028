import { uvOf, type UV } from './chromaticity.ts';
import { tristimulus, type Tristimulus } from './observer.ts';

/** Second radiation constant in m·K, as the colour standards take it (CIE 15; CODATA has 1.438 776 877e-2). */
const secondRadiationConstant = 1.4388e-2;

/** Power of a Planckian radiator at a wavelength in metres, on any scale. */
export function planckian(metres: number, kelvin: number): number {
  const length = metres * 1e7;
  const squared = length * length;
  // Multiplied out: a power is ten times as slow, and the locus is thousands of sums.
  const fifth = squared * squared * length;
  return 1 / (fifth * Math.expm1(secondRadiationConstant / (metres * kelvin)));
}

/** A point of the Planckian locus, and the direction across it towards green, of length 1. */
export interface LocusPoint {
  readonly at: UV;
  readonly green: UV;
}

/** The point of the Planckian locus at a temperature, by integration over the observer. */
export function locusPoint(kelvin: number): LocusPoint {
  const here = tristimulus((metres) => planckian(metres, kelvin));
  const warmer = tristimulus((metres) => planckianRise(metres, kelvin));
  const along = change(here, warmer);
  const length = Math.hypot(along.u, along.v);
  // With rising temperature the locus runs to smaller u: green lies on its right hand.
  return { at: uvOf(here), green: { u: along.v / length, v: -along.u / length } };
}

/** How a Planckian radiator’s power changes with temperature: ∂/∂T of `planckian`. */
function planckianRise(metres: number, kelvin: number): number {
  const exponent = secondRadiationConstant / (metres * kelvin);
  return (planckian(metres, kelvin) * exponent) / kelvin / -Math.expm1(-exponent);
}

/** Change of u, v when the tristimulus values change: the quotient rule. */
function change(here: Tristimulus, by: Tristimulus): UV {
  const sum = here.X + 15 * here.Y + 3 * here.Z;
  const sumBy = by.X + 15 * by.Y + 3 * by.Z;
  return {
    u: (4 * (by.X * sum - here.X * sumBy)) / sum ** 2,
    v: (6 * (by.Y * sum - here.Y * sumBy)) / sum ** 2,
  };
}
