import { columnsOf } from '../columns.ts';

export const lightNames = ['l1', 'l2', 'l3', 'l4', 'l5', 'l6', 'l7', 'l8'] as const;
const light = { caption: '', width: 108 } as const;

export const { letterOf, widths, captionRow, row } = columnsOf({
  setUp: { caption: 'Set-up', width: 176 },
  place: { caption: 'Place', width: 156 },
  order: { caption: 'Shot as', width: 88, numbers: true },
  takes: { caption: 'Shooting takes', width: 120, numbers: true },
  l1: light,
  l2: light,
  l3: light,
  l4: light,
  l5: light,
  l6: light,
  l7: light,
  l8: light,
  rigged: { caption: 'To rig', width: 84, numbers: true },
  struck: { caption: 'To strike', width: 88, numbers: true },
  moved: { caption: 'To move', width: 88, numbers: true },
  hours: { caption: 'Takes', width: 92, numbers: true },
  from: { caption: 'Begins', width: 148, numbers: true },
  until: { caption: 'Shot by', width: 148, numbers: true },
  words: { caption: 'In words', width: 272 },
  rig: { caption: 'Rig', width: 340 },
});

export type ColumnName = Parameters<typeof letterOf>[0];
