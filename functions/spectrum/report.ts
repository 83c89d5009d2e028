import type { XY } from '../colour/chromaticity.ts';
import { temperatureOf } from '../colour/temperatureOf.ts';
import { isError, type FunctionError } from '../values.ts';
import { consistencyFrom, renderingFrom, similarityFrom } from './indices.ts';
import { luxOf, peakOf, type Light } from './light.ts';
import type { ReferenceKind } from './reference.ts';
import { kindOfReference, type Rendering } from './rendering.ts';

/** All that one spectrum comes to. What cannot be said is the sentence why, which begins with `name`. */
export interface Report {
  readonly xy: XY;
  readonly nearest: { readonly kelvin: number; readonly duv: number } | FunctionError;
  /** Ra and R1 to R14, of CIE 13.3. */
  readonly rendering: Rendering | FunctionError;
  /** SSI against Planckian light or daylight of its own temperature, of SMPTE ST 2122. */
  readonly similarity: number | FunctionError;
  /** TLCI, of EBU Tech 3355. */
  readonly consistency: number | FunctionError;
  /** Nanometres. */
  readonly peak: number;
  /** Of an irradiance only. */
  readonly lux: number | undefined;
}

const reports = new WeakMap<Light, Report>();

export function reportOf(name: string, light: Light): Report {
  const before = reports.get(light);
  if (before) return before;
  const { xy, spectrum } = light;
  const report = {
    xy,
    nearest: temperatureOf(name, xy.x, xy.y),
    rendering: renderingFrom(name, light),
    similarity: similarityFrom(name, light),
    consistency: consistencyFrom(name, light),
    peak: peakOf(spectrum),
    lux: spectrum.measures === 'irradiance' ? luxOf(light) : undefined,
  };
  reports.set(light, report);
  return report;
}

/** The reference that the report compares with; undefined where there is none. */
export function referenceOf({
  nearest,
  rendering,
}: Report): { readonly kind: ReferenceKind; readonly kelvin: number } | undefined {
  if (isError(nearest) || isError(rendering)) return undefined;
  return { kind: kindOfReference(nearest.kelvin), kelvin: nearest.kelvin };
}
