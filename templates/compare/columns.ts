import { columnsOf } from '../columns.ts';

export const { letterOf, widths, captions, row, captionRow } = columnsOf({
  option: { caption: 'Option', width: 148 },
  words: { caption: 'In words', width: 300 },
  reached: { caption: 'Reached', width: 116, numbers: true },
  off: { caption: 'From wanted', width: 112, numbers: true },
  covers: { caption: 'Covers', width: 104, numbers: true },
  cost: { caption: 'Cost', width: 104, numbers: true },
  fixture: { caption: 'Fixture', width: 168 },
  count: { caption: 'Count', width: 84, numbers: true },
  gives: { caption: 'One gives', width: 104, numbers: true },
  givesAt: { caption: 'at', width: 84, numbers: true },
  field: { caption: 'Field', width: 84, numbers: true },
  distance: { caption: 'Stands at', width: 96, numbers: true },
  loss: { caption: 'Diffusion', width: 96, numbers: true },
  output: { caption: 'Output', width: 84, numbers: true },
  watts: { caption: 'Each draws', width: 100, numbers: true },
  powerFactor: { caption: 'Power factor', width: 112, numbers: true },
  amps: { caption: 'Current', width: 92, numbers: true },
  circuits: { caption: 'Circuits', width: 88, numbers: true },
  rate: { caption: 'A day', width: 92, numbers: true },
  extras: { caption: 'Crew, transport', width: 132, numbers: true },
  fits: { caption: 'Wide enough', width: 112 },
  order: { caption: 'Cost, in order', width: 120, numbers: true },
  draws: { caption: 'Draws in all', width: 108, numbers: true },
  key: { caption: 'Its turn', width: 92, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];
