import { daylightComponents } from '../data/daylightComponents.ts';
import type { XY } from './chromaticity.ts';

/** Chromaticity of a phase of daylight from 4000 to 25,000 K: CIE 15, 3.1, equations 3.2 to 3.4. */
export function daylightXY(kelvin: number): XY {
  const x =
    kelvin <= 7000
      ? -4.607e9 / kelvin ** 3 + 2.9678e6 / kelvin ** 2 + 0.099_11e3 / kelvin + 0.244_063
      : -2.0064e9 / kelvin ** 3 + 1.9018e6 / kelvin ** 2 + 0.247_48e3 / kelvin + 0.237_04;
  return { x, y: -3 * x ** 2 + 2.87 * x - 0.275 };
}

/** Relative power of a phase of daylight every 5 nm, 100 at 560 nm: CIE 15, 3.1, with M1 and M2 to three decimals. */
export function daylightSpectrum(
  kelvin: number,
): readonly (readonly [nm: number, power: number])[] {
  const { x, y } = daylightXY(kelvin);
  const parts = 0.0241 + 0.2562 * x - 0.7341 * y;
  const m1 = toThousandth((-1.3515 - 1.7703 * x + 5.9114 * y) / parts);
  const m2 = toThousandth((0.03 - 31.4424 * x + 30.0717 * y) / parts);
  return daylightComponents.map(([nm, s0, s1, s2]) => [nm, s0 + m1 * s1 + m2 * s2]);
}

const toThousandth = (value: number): number => Math.round(value * 1000) / 1000;
