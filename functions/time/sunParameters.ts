import { between, sampled } from '../domains.ts';
import type { Domain } from '../domains.ts';
import { refuse, type FunctionError } from '../values.ts';

/** Days of a spreadsheet for the first of January 1900 and of 2200. */
const [firstDay, lastDay] = [2, 109_575];

const dates: Domain = {
  says: 'a date from 1900 to 2199',
  allows: (value) => value >= firstDay && value < lastDay,
  samples: [45_658, 49_309],
};

export const when = {
  name: 'when',
  quantity: 'dateTime',
  domain: dates,
  help: 'Date and time on the clock, such as 2026-06-21 18:30.',
} as const;

export const date = {
  name: 'date',
  quantity: 'dateTime',
  domain: dates,
  help: 'The day; a time of day is ignored.',
} as const;

export const latitude = {
  name: 'latitude',
  quantity: 'angle',
  domain: between(-90, 90),
  help: 'Latitude in degrees; north is positive.',
} as const;

export const longitude = {
  name: 'longitude',
  quantity: 'angle',
  domain: between(-180, 180),
  help: 'Longitude in degrees; east is positive.',
} as const;

export const utcOffset = {
  name: 'utc_offset',
  quantity: 'duration',
  domain: sampled(between(-14, 14), -12, 14),
  optional: true,
  help: 'Hours that the clock is ahead of universal time, summer time included; left out, what the time zone of the book has then.',
} as const;

export const fromEphemeris = {
  none: 'The sun’s place comes from an ephemeris, hundreds of terms long.',
} as const;

/** What a function says where nobody brought an ephemeris. */
export function noEphemeris(name: string): () => FunctionError {
  return () =>
    refuse(`${name}: there is no ephemeris here that knows where the sun stands.`, '#N/A');
}
