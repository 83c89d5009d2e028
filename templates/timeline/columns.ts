import { columnsOf } from '../columns.ts';

export const { letterOf, widths, captionRow, captions, row } = columnsOf({
  time: { caption: 'Time', width: 132 },
  reading: { caption: 'Reading', width: 112, numbers: true },
  meter: { caption: 'With meter', width: 128 },
  overBy: { caption: 'It reads over by', width: 132, numbers: true },
  fromFirst: { caption: 'From first', width: 104, numbers: true },
  verdict: { caption: 'Verdict', width: 148 },
  sun: { caption: 'Sun stands at', width: 124, numbers: true },
  note: { caption: 'Note', width: 220 },
  hours: { caption: 'Hours', width: 88, numbers: true },
  line: { caption: 'By the drift', width: 112, numbers: true },
  offLine: { caption: 'Off the line', width: 112, numbers: true },
  asF: { caption: 'As f', width: 96, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];
