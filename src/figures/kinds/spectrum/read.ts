import { sampled, tristimulusOf } from '../../../../functions/spectrum/grid.ts';
import { referenceCurve } from '../../../../functions/spectrum/reference.ts';
import { referenceOf, reportOf, type Report } from '../../../../functions/spectrum/report.ts';
import {
  curveOf,
  longest,
  shortest,
  stepOf,
  type MadeUp,
  type Measures,
} from '../../../../functions/spectrum/spectrum.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { spectrumIn } from './given.ts';

/** Wavelength and value, rising. */
export type Curve = readonly (readonly [nm: number, value: number])[];

export interface Reference {
  readonly kind: 'planck' | 'daylight';
  readonly kelvin: number;
  /** With as much light as the spectrum has. */
  readonly curve: Curve;
}

export interface SpectrumRead {
  readonly name: string;
  readonly filterName: string | undefined;
  readonly measures: Measures;
  readonly curve: Curve;
  /** The highest value of the curve. */
  readonly most: number;
  readonly madeUp: readonly MadeUp[];
  /** Of a light; a filter by itself comes to nothing. */
  readonly report: Report | undefined;
  readonly reference: Reference | undefined;
}

export function readSpectrum(given: Given): SpectrumRead | Undrawn {
  const found = spectrumIn(given);
  if ('reason' in found) return found;
  const { name, filterName, light, spectrum } = found;
  const { madeUp = [], measures } = spectrum;
  const power = curveOf(spectrum);
  const curve = wavelengths(stepOf(spectrum)).map((nm) => [nm, power(nm)] as const);
  const most = Math.max(...curve.map(([, value]) => value));
  const base = { name, filterName, measures, curve, most, madeUp };
  if (!light) return { ...base, report: undefined, reference: undefined };
  const report = reportOf(name, light);
  const like = referenceOf(report);
  return { ...base, report, reference: like && { ...like, curve: alike(like) } };

  function alike({ kind, kelvin }: Pick<Reference, 'kind' | 'kelvin'>): Curve {
    const curve = referenceCurve(kind, kelvin);
    const { grid } = sampled(spectrum);
    const own = tristimulusOf({ grid, values: grid.nanometres.map(curve) }).Y;
    const scale = light!.tristimulus.Y / own;
    return wavelengths(5).map((nm) => [nm, scale * curve(nm)] as const);
  }
}

/** As fine as it was read, and no finer than a picture shows. */
function wavelengths(step: number): readonly number[] {
  const every = Math.max(0.5, Math.min(5, step));
  const count = Math.round((longest - shortest) / every);
  return Array.from(
    { length: count + 1 },
    (_, index) => shortest + (index * (longest - shortest)) / count,
  );
}
