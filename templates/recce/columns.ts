import { columnsOf } from '../columns.ts';

/** Tables below one another share their columns; names are those of the windows. */
export const { letterOf, widths, captions, captionRow, row } = columnsOf({
  name: { caption: 'Window', width: 176 },
  place: { caption: 'Place', width: 112 },
  words: { caption: 'In words', width: 336 },
  width: { caption: 'Width', width: 100, numbers: true },
  height: { caption: 'Height', width: 96, numbers: true },
  sill: { caption: 'Sill', width: 100, numbers: true },
  bearing: { caption: 'Faces', width: 108, numbers: true },
  skyline: { caption: 'Skyline', width: 112, numbers: true },
  sideways: { caption: 'Sideways', width: 96, numbers: true },
  glass: { caption: 'Glass', width: 92, numbers: true },
  markOff: { caption: 'Mark off', width: 96, numbers: true },
  markAside: { caption: 'to the right', width: 100, numbers: true },
  markUp: { caption: 'Mark up', width: 92, numbers: true },
  sky: { caption: 'Sky on mark', width: 108, numbers: true },
  sun: { caption: 'Sun on mark', width: 108, numbers: true },
  comesIn: { caption: 'Sun comes in', width: 176 },
  at: { caption: 'Row', width: 64, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];
