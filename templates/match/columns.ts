import { columnsOf } from '../columns.ts';

/** Every section of the sheet stands in these, under captions of its own. */
export const { letterOf, widths, captions, row, captionRow } = columnsOf({
  source: { caption: 'Source', width: 156 },
  role: { caption: 'Role', width: 92 },
  may: { caption: 'Can be filtered', width: 124 },
  kelvin: { caption: 'Reading', width: 100, numbers: true },
  tint: { caption: 'Tint', width: 100, numbers: true },
  xTyped: { caption: 'or x', width: 100, numbers: true },
  yTyped: { caption: 'and y', width: 84, numbers: true },
  level: { caption: 'Level', width: 92, numbers: true },
  x: { caption: 'x', width: 80, numbers: true },
  y: { caption: 'y', width: 80, numbers: true },
  verdict: { caption: 'Against the white', width: 264 },
  words: { caption: 'In words', width: 560 },
  pieces: { caption: 'Nearest of the kit', width: 220 },
  instead: { caption: 'Taken instead', width: 180 },
  on: { caption: 'On it', width: 220 },
  shift: { caption: 'Shift wanted', width: 112, numbers: true },
  tintShift: { caption: 'Tint wanted', width: 112, numbers: true },
  leftMired: { caption: 'Still off', width: 100, numbers: true },
  leftDuv: { caption: 'in tint', width: 100, numbers: true },
  difference: { caption: 'Δu′v′', width: 84, numbers: true },
  loss: { caption: 'Loses', width: 88, numbers: true },
  then: { caption: 'Level then', width: 100, numbers: true },
  thenX: { caption: 'x then', width: 80, numbers: true },
  thenY: { caption: 'y then', width: 80, numbers: true },
  turn: { caption: 'Turn', width: 64, numbers: true },
  asKelvin: { caption: 'As kelvin', width: 100, numbers: true },
  asDuv: { caption: 'As Duv', width: 100, numbers: true },
  counts: { caption: 'Filtered', width: 84 },
  lose: { caption: 'If left, all lose', width: 124, numbers: true },
  stay: { caption: 'Stay off', width: 84, numbers: true },
  score: { caption: 'For the order', width: 112, numbers: true },
  leave: { caption: 'Left', width: 140 },
  correct: { caption: 'Corrected', width: 300 },
  key: { caption: 'By loss', width: 100, numbers: true },
});

export type ColumnName = Parameters<typeof letterOf>[0];

/** Where the sections stand: each heading, and its first and last row. */
export const rows = {
  sources: { head: 9, first: 10, last: 15 },
  channels: { head: 18, first: 19, last: 20 },
  settings: { head: 22, first: 23, last: 29 },
  windows: { head: 32, first: 33, last: 35 },
  kit: { head: 38, first: 39, last: 58 },
} as const;

export const at = (column: ColumnName, line: number): string => `${letterOf(column)}${line}`;

/** All of a column of a section, fixed. */
export const down = (column: ColumnName, { first, last }: { first: number; last: number }) =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

/** A block from one column to another, fixed. */
export const block = (
  from: ColumnName,
  to: ColumnName,
  { first, last }: { first: number; last: number },
) => `$${letterOf(from)}$${first}:$${letterOf(to)}$${last}`;

/** What all sources are held against, and how near is near enough. */
export const white = {
  kelvin: '$B$1',
  duv: '$D$1',
  x: '$F$1',
  y: '$G$1',
  mired: '$B$2',
  within: '$D$2',
  lose: '$F$2',
  stay: '$H$2',
} as const;

/** Piece, mired, Duv and loss, as FILTERFOR and its like take them. */
export const kit = block('source', 'kelvin', rows.kit);
