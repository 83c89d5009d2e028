import type { BookDefaults, Parameter } from '../define.ts';
import type { Ephemeris } from '../ephemeris.ts';
import type { Fixtures } from '../fixture/fixture.ts';
import type { WritingSettings } from '../quantities/settings.ts';
import type { Spectra } from '../spectrum/spectra.ts';
import { refuse, type FunctionError, type Value } from '../values.ts';

/** What a call falls back on, and how texts are read. */
export interface CallSettings {
  readonly writing: WritingSettings;
  readonly book: BookDefaults;
  /** Where the sun stands; functions that need it say so when it is missing. */
  readonly ephemeris?: Ephemeris;
  /** Fixtures by name; functions that need them say so when they are missing. */
  readonly fixtures?: Fixtures;
  /** Spectra by name; a name is looked up nowhere when they are missing. */
  readonly spectra?: Spectra;
}

/** Where an argument goes: which parameter of which function. */
export interface Slot {
  readonly name: string;
  readonly parameter: Parameter;
  readonly settings: CallSettings;
}

export function waitingFor({ parameter }: Slot, at: string | undefined): FunctionError {
  const where = at === undefined ? '' : ` (${at})`;
  return { code: '#N/A', message: `waiting for ${parameter.name}${where}`, waiting: true };
}

export function wrongType(slot: Slot, wanted: string, given: Value): FunctionError {
  return wrong(slot, `must be ${wanted}, not ${JSON.stringify(given)}.`);
}

export function wrong({ name, parameter }: Slot, what: string): FunctionError {
  return refuse(`${name}: ${parameter.name} ${what}`, '#VALUE!');
}
