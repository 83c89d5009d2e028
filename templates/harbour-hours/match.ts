import { at as camera } from '../key-fill-background/camera.ts';
import { letterOf, type ColumnName } from '../key-fill-background/columns.ts';
import { keyRow } from '../key-fill-background/rows.ts';
import { matchSheet } from '../match/plan.ts';
import type { PlannedSource } from '../match/sources.ts';
import { letterOf as recceLetterOf } from '../recce/columns.ts';
import { windows } from '../recce/places.ts';

const inLoft = (cell: string): string => `='Sail loft'!${cell}`;
const read = (column: ColumnName, row: number): string => inLoft(`${letterOf(column)}${row}`);

/** Of a window of the loft as it was measured on the recce. */
const measured = (side: 'width' | 'height', index: number): string =>
  `=Recce!${recceLetterOf(side)}${windows.first + index}`;

/** Rows of the sheet _Sail loft_ with the colours of key, fill and window. */
const colours = { key: 25, fill: 26, window: 27 } as const;

/** As the walk has it: kelvin and tint by the colour meter, the level of that light alone at the face. */
const metered = (
  colour: keyof typeof colours,
  source: string,
  role: string,
  level: string,
): PlannedSource => ({
  ...{ source, role, level },
  kelvin: read('reading', colours[colour]),
  tint: read('wanted', colours[colour]),
});

/** The loft as the walk found it, with two practicals that only this sheet tells of. Invented. */
const loft = matchSheet({
  name: 'Match',
  white: inLoft(camera.white),
  sources: [
    metered('window', 'Window', 'window', read('lampsOff', keyRow)),
    metered('key', 'Key', 'key', read('own', keyRow)),
    metered('fill', 'Fill', 'fill', read('own', keyRow + 1)),
    { source: 'Bench tube', role: 'practical', x: '0.3830', y: '0.3990', level: '4 lx' },
    // A flame is to look like one.
    { source: 'Oil lamp', role: 'practical', kelvin: '1900 K', level: '1.5 lx', may: 'meant' },
  ],
  // The panel that fills, behind its frame.
  channels: [
    { kelvin: '2700 K', tint: '0.0010', level: '620 lx' },
    { kelvin: '6500 K', tint: '0.0020', level: '770 lx' },
  ],
  windows: [0, 1].map((index) => ({
    window: `Window ${index + 1}`,
    source: 'Window',
    panes: '1',
    width: measured('width', index),
    height: measured('height', index),
  })),
});

/** Spectra of the shelf that stand for two of them, as near as an invented sample comes. */
const drawn = [
  { kind: 'spectrum', title: 'A tube like the bench’s, against its reference', of: 'Spiky tube' },
  { kind: 'rendering', title: 'A tube like the bench’s, R1 to R14', of: 'Spiky tube' },
] as const;

export const matchInLoft = {
  ...loft,
  figures: [
    ...(loft.figures ?? []),
    ...drawn.map(({ kind, title, of }) => ({ kind, title, cells: {}, options: { spectrum: of } })),
  ],
};
