import { planckCurve } from './reference.ts';
import { spectraFrom, type Spectra } from './spectra.ts';
import type { Measures, Spectrum } from './spectrum.ts';

const every5 = Float64Array.from({ length: 95 }, (_, index) => 360 + 5 * index);

function made(measures: Measures, value: (nm: number) => number): Spectrum {
  return { nanometres: every5, values: every5.map(value), measures };
}

/** A bell about a wavelength, so many nanometres wide at half its height. */
export const bell = (middle: number, width: number) => (nm: number) =>
  2 ** -(((2 * (nm - middle)) / width) ** 2);

const [blue, yellow] = [bell(450, 25), bell(575, 130)];
const tungsten = planckCurve(3200);

/** The spectra that the examples are worked with. */
export const exampleSpectra: Spectra = spectraFrom({
  // Planck’s law at 3200 K, 1 at 560 nm.
  Tungsten: made('shape', (nm) => tungsten(nm) / tungsten(560)),
  // A blue emitter under a yellow phosphor.
  'Phosphor white': made('shape', (nm) => 0.9 * blue(nm) + yellow(nm)),
  // The same power at every wavelength, one milliwatt on a square metre for each nanometre.
  'Equal energy': made('irradiance', () => 0.001),
  // A quarter of all light.
  Grey: made('transmission', () => 0.25),
  // More of the long wavelengths.
  Amber: made('transmission', (nm) => Math.min(0.9, Math.max(0.1, (nm - 400) / 300))),
});
