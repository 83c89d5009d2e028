import { columnsOf, type PlannedColumn } from '../columns.ts';

/** The points' columns from left to right: what is typed and what comes of it, then how it was counted. */
export const keyColumns = {
  point: { caption: 'Point', width: 172 },
  wanted: { caption: 'Wanted', width: 100, numbers: true },
  reading: { caption: 'Reading', width: 112, numbers: true },
  meter: { caption: 'Meter', width: 98 },
  fromKey: { caption: 'From key', width: 94, numbers: true },
  verdict: { caption: 'Verdict', width: 188 },
  light: { caption: 'Light', width: 90, numbers: true },
  newDistance: { caption: 'New distance', width: 104, numbers: true },
  newOutput: { caption: 'New output', width: 96, numbers: true },
  countedOn: { caption: 'Counted on', width: 240 },
  alone: { caption: 'Alone', width: 100, numbers: true },
  with: { caption: 'With', width: 72 },
  lampsOff: { caption: 'Lamps off', width: 96, numbers: true },
  standsAt: { caption: 'Stands at', width: 96, numbers: true },
  nearest: { caption: 'Nearest', width: 88, numbers: true },
  outputNow: { caption: 'Output now', width: 96, numbers: true },
  note: { caption: 'Note', width: 260 },
  asF: { caption: 'As f-number', width: 104, numbers: true },
  here: { caption: 'Here', width: 92, numbers: true },
  wantedLight: { caption: 'Wanted light', width: 104, numbers: true },
  own: { caption: 'Its own', width: 92, numbers: true },
} as const satisfies Record<string, PlannedColumn>;

export type ColumnName = keyof typeof keyColumns;

export const columns = columnsOf(keyColumns);

export const { letterOf, widths, captions: pointCaptions, row, captionRow } = columns;
