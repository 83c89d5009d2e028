import { daylightSpectrum } from '../colour/daylight.ts';
import { planckian } from '../colour/planck.ts';

export type ReferenceKind = 'planck' | 'daylight';

/** A table every 5 nm as a curve: straight between, nothing beyond. */
export function straight(table: readonly (readonly [nm: number, value: number])[]) {
  const begin = table[0]![0];
  return (nm: number): number => {
    const place = (nm - begin) / 5;
    const at = Math.floor(place);
    const here = table[at]?.[1] ?? 0;
    return here + (place - at) * ((table[at + 1]?.[1] ?? here) - here);
  };
}

/** Power by wavelength of Planckian light, on any scale. */
export function planckCurve(kelvin: number): (nm: number) => number {
  return (nm) => planckian(nm * 1e-9, kelvin);
}

/** Power by wavelength of a phase of daylight, 100 at 560 nm. */
export function daylightCurve(kelvin: number): (nm: number) => number {
  return straight(daylightSpectrum(kelvin));
}

export function referenceCurve(kind: ReferenceKind, kelvin: number): (nm: number) => number {
  return kind === 'planck' ? planckCurve(kelvin) : daylightCurve(kelvin);
}
