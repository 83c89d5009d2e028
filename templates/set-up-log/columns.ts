import { columnsOf } from '../columns.ts';

/** The captions by which the command that logs finds its columns. */
export const { letterOf, widths, captions, captionRow, row } = columnsOf({
  scene: { caption: 'Scene', width: 84 },
  setUp: { caption: 'Set-up', width: 96 },
  day: { caption: 'Day', width: 116, numbers: true },
  time: { caption: 'Time', width: 84, numbers: true },
  camera: { caption: 'Camera', width: 376 },
  light: { caption: 'Light', width: 128 },
  fixture: { caption: 'Fixture', width: 180 },
  channel: { caption: 'Channel', width: 92 },
  circuit: { caption: 'Circuit', width: 92 },
  level: { caption: 'Level', width: 84, numbers: true },
  gel: { caption: 'Gel', width: 132 },
  readings: { caption: 'Readings', width: 288 },
  ratio: { caption: 'Ratio', width: 184 },
  photo: { caption: 'Photo', width: 84 },
  note: { caption: 'Note', width: 232 },
  found: { caption: 'Found', width: 76, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];
