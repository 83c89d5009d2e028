import type { Spectrum } from './spectrum.ts';

/** Spectra by name. The library leaves them to whoever calls it, in the call settings. */
export interface Spectra {
  readonly names: readonly string[];
  /** Without regard to case. A sentence where there is one of that name but it cannot be read. */
  named(name: string): Spectrum | string | undefined;
}

/** Spectra for one’s own use, by name. */
export function spectraFrom(list: Readonly<Record<string, Spectrum>>): Spectra {
  const byName = new Map(Object.entries(list).map(([name, one]) => [keyOf(name), one]));
  return { names: Object.keys(list), named: (name) => byName.get(keyOf(name)) };
}

const keyOf = (name: string) => name.trim().toLowerCase();

/** Where nobody brought any. */
export const noSpectra: Spectra = spectraFrom({});
