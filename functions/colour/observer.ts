import { observer1931 } from '../data/observer1931.ts';
import { everyNanometre } from './everyNanometre.ts';

/** Tristimulus values on any scale. */
export interface Tristimulus {
  readonly X: number;
  readonly Y: number;
  readonly Z: number;
}

const column = (index: 1 | 2 | 3) => everyNanometre(observer1931.map((row) => row[index]));

/** The CIE 1931 observer every nanometre from 360 to 830: wavelength in metres and its three functions. */
export const observer = {
  wavelengths: column(1).map((_, index) => (360 + index) * 1e-9),
  x: column(1),
  y: column(2),
  z: column(3),
};

/** Sums a spectrum given by wavelength in metres, ISO/CIE 11664-3. */
export function tristimulus(power: (metres: number, index: number) => number): Tristimulus {
  const { wavelengths, x, y, z } = observer;
  let X = 0;
  let Y = 0;
  let Z = 0;
  for (let index = 0; index < wavelengths.length; index++) {
    const watts = power(wavelengths[index] ?? 0, index);
    X += watts * (x[index] ?? 0);
    Y += watts * (y[index] ?? 0);
    Z += watts * (z[index] ?? 0);
  }
  return { X, Y, Z };
}
