import type { EntrySettings } from '../../book/types.ts';

/** Entries that come in are written with a point and in base units. */
export const importedUnder: EntrySettings = {
  decimal: '.',
  illuminance: 'lx',
  length: 'm',
  shutter: 'time',
};
