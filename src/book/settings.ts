import type { WritingSettings } from '../../functions/quantities/settings.ts';
import type { EntrySettings, Settings } from './types.ts';

/** What a new book is set to, until its planner says otherwise. */
export const usualSettings: Settings = {
  decimal: '.',
  illuminance: 'lx',
  length: 'm',
  shutter: 'time',
  fNumber: 'thirds',
  clock: '24',
  currency: 'EUR',
  receptor: 'dome',
  // ISO 2720 allows 320 to 540 for a dome, 240 to 400 for a flat receptor, 10.6 to 13.4 reflected.
  domeConstant: 340,
  flatConstant: 250,
  reflectedConstant: 12.5,
  mainsHertz: 50,
  mainsVolts: 230,
  continuousShare: 0.8,
  tolerance: 1 / 3,
  zone: 'Etc/UTC',
  page: 'A4',
  more: {},
};

const kept = new Map<string, EntrySettings>();

/** The part of the settings that an entry is read under: one object for each combination. */
export function entrySettings({
  decimal,
  illuminance,
  length,
  shutter,
}: EntrySettings): EntrySettings {
  const key = [decimal, illuminance, length, shutter].join();
  const known = kept.get(key) ?? { decimal, illuminance, length, shutter };
  kept.set(key, known);
  return known;
}

/** How a book's numbers are read and written. */
export function writingSettings(settings: Settings): WritingSettings {
  const { decimal, illuminance, length, shutter, fNumber, clock, currency } = settings;
  const luminance = illuminance === 'fc' ? 'fL' : 'cd/m²';
  return {
    decimal,
    illuminance,
    luminance,
    length,
    shutter,
    fNumbers: fNumber,
    clock,
    currency,
  };
}
