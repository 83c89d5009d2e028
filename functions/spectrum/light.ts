import type { XY } from '../colour/chromaticity.ts';
import type { Tristimulus } from '../colour/observer.ts';
import { sampled, tristimulusOf, type Sampled } from './grid.ts';
import { curveOf, longest, shortest, stepOf, type Spectrum } from './spectrum.ts';

/** A spectrum with what every figure begins from. */
export interface Light {
  readonly spectrum: Spectrum;
  readonly sampled: Sampled;
  readonly tristimulus: Tristimulus;
  readonly xy: XY;
}

const known = new WeakMap<Spectrum, Light>();

export function lightOf(spectrum: Spectrum): Light {
  const before = known.get(spectrum);
  if (before) return before;
  const on = sampled(spectrum);
  const tristimulus = tristimulusOf(on);
  const { X, Y, Z } = tristimulus;
  const sum = X + Y + Z;
  const light = { spectrum, sampled: on, tristimulus, xy: { x: X / sum, y: Y / sum } };
  known.set(spectrum, light);
  return light;
}

/** Lumens for each watt at 555 nm (ISO 23539). */
const lumensAWatt = 683;

/** Lux of an irradiance in W/(m²·nm). */
export const luxOf = ({ tristimulus }: Light): number => lumensAWatt * tristimulus.Y;

/** The wavelength of the highest reading from 380 to 780 nm. */
export function peakOf({ nanometres, values }: Spectrum): number {
  let best = -1;
  nanometres.forEach((nm, index) => {
    if (nm < shortest || nm > longest) return;
    if (best < 0 || values[index]! > values[best]!) best = index;
  });
  return nanometres[best] ?? Number.NaN;
}

const products = new WeakMap<Spectrum, WeakMap<Spectrum, Spectrum>>();

/**
 * A light behind a filter: the product at the light’s own wavelengths, or every 5 nm where the light
 * is read more coarsely. The filter is read straight between its readings.
 */
export function through(light: Spectrum, filter: Spectrum): Spectrum {
  const before = products.get(light)?.get(filter);
  if (before) return before;
  const passing = curveOf(filter);
  const power = curveOf(light);
  const coarse = stepOf(light) > 5;
  const every = Float64Array.from(
    { length: (longest - shortest) / 5 + 1 },
    (_, index) => shortest + 5 * index,
  );
  const nanometres = coarse ? every : light.nanometres;
  const values = nanometres.map(
    (nm, index) => (coarse ? power(nm) : light.values[index]!) * passing(nm),
  );
  const product: Spectrum = { nanometres, values, measures: light.measures };
  const row = products.get(light) ?? new WeakMap<Spectrum, Spectrum>();
  products.set(light, row.set(filter, product));
  return product;
}
