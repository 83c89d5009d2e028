import type { Measures } from '../../../functions/spectrum/spectrum.ts';

/** A wavelength in nanometres and a value, with the line that they stand on. */
export interface Row {
  readonly nm: number;
  readonly value: number;
  readonly line: number;
}

/** One spectrum of a file before it is checked. */
export interface Found {
  /** What the file calls it; empty where it says nothing. */
  readonly name: string;
  readonly measures: Measures;
  readonly rows: readonly Row[];
}

/** What stands in headings and remarks about the values, and what to multiply them by. */
export interface Meaning {
  readonly measures: Measures;
  readonly factor: number;
}

const irradiance = /([mµμu]?)W\s*[·*]?\s*(?:\/\s*\(?\s*)?m\s*(?:\^?\s*-?\s*2|²|⁻²)?[\s·*/.)(]*nm/iu;

/** "W/m²/nm" in one of its spellings, "transmission", "%"; otherwise only the shape is known. */
export function meaningOf(text: string): Meaning {
  if (/transmi|τ/iu.test(text))
    return { measures: 'transmission', factor: text.includes('%') ? 0.01 : 1 };
  const [found, prefix = ''] = irradiance.exec(text) ?? [];
  if (found === undefined) return { measures: 'shape', factor: 1 };
  const factors: Readonly<Record<string, number>> = { '': 1, m: 1e-3 };
  return { measures: 'irradiance', factor: factors[prefix.toLowerCase()] ?? 1e-6 };
}
