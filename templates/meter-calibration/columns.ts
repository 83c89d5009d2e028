import { columnsOf } from '../columns.ts';

export const { letterOf, widths, captionRow, captions, row } = columnsOf({
  point: { caption: 'Point', width: 168 },
  first: { caption: 'First reads', width: 132, numbers: true },
  second: { caption: 'Second reads', width: 128, numbers: true },
  offset: { caption: 'Offset', width: 112, numbers: true },
  fromMean: { caption: 'From mean', width: 112, numbers: true },
  firstF: { caption: 'First, as f', width: 112, numbers: true },
  secondF: { caption: 'Second, as f', width: 116, numbers: true },
  note: { caption: 'Note', width: 220 },
});

export type ColumnName = Parameters<typeof letterOf>[0];
