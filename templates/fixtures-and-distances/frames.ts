import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { text } from '../rig.ts';

/** A soft source that was metered once. */
export interface PlannedFrame {
  readonly light: string;
  readonly size: readonly [width: string, height: string];
  readonly reading: string;
  readonly readAt: string;
  readonly distance: string;
}

const rows = 4;
const captions = {
  A: 'Light',
  C: 'Width',
  D: 'Height',
  E: 'Reading',
  F: 'read at',
  G: 'Distance',
  H: 'There',
  I: 'by square',
  J: 'square off',
  M: 'Luminance',
  N: 'Softness',
} as const;

function frameRow(row: number, frame: PlannedFrame | undefined): Record<string, PlannedCell> {
  const once = (formula: string) => `=IF(OR(ISBLANK(E${row}),ISBLANK(G${row})),"",${formula})`;
  return {
    [`A${row}`]: text(frame?.light ?? ''),
    [`C${row}`]: choice(frame?.size[0] ?? '', 'length'),
    [`D${row}`]: choice(frame?.size[1] ?? '', 'length'),
    [`E${row}`]: { ...choice(frame?.reading ?? '', 'illuminance'), role: 'reading' },
    [`F${row}`]: choice(frame?.readAt ?? '', 'length'),
    [`G${row}`]: choice(frame?.distance ?? '', 'length'),
    [`H${row}`]: {
      typed: once(`PANELLUX(M${row},C${row},D${row},G${row})`),
      quantity: 'illuminance',
    },
    [`I${row}`]: { typed: once(`INVERSESQUARE(E${row},F${row},G${row})`), quantity: 'illuminance' },
    [`J${row}`]: { typed: once(`STOPS(I${row},H${row})`), quantity: 'stops' },
    [`M${row}`]: {
      typed: once(`PANELLUMINANCE(E${row},C${row},D${row},F${row})`),
      quantity: 'luminance',
    },
    [`N${row}`]: {
      typed: once(`SOURCEANGLE(MAX(C${row},D${row}),G${row})`),
      quantity: 'angle',
      decimals: 0,
    },
  };
}

/** Frames and boards from one reading, as rectangles and by the inverse square law. */
export function frameTable(
  head: number,
  planned: readonly PlannedFrame[],
): { readonly cells: Record<string, PlannedCell>; readonly rows: number } {
  return {
    cells: {
      [`A${head - 1}`]: {
        typed: 'Frames and boards from one reading straight in front',
        bold: true,
      },
      ...Object.fromEntries(
        Object.entries(captions).map(([column, typed]): [string, PlannedCell] => [
          `${column}${head}`,
          { typed, bold: true, ...(column !== 'A' && { align: 'right' }) },
        ]),
      ),
      ...Object.assign(
        {},
        ...Array.from({ length: rows }, (_, index) => frameRow(head + 1 + index, planned[index])),
      ),
    },
    rows: rows + 1,
  };
}

export const plannedFrames: readonly PlannedFrame[] = [
  {
    light: 'Key frame',
    size: ['1.2 m', '1.2 m'],
    reading: '620 lx',
    readAt: '2 m',
    distance: '1 m',
  },
  { light: 'Door board', size: ['2 m', '1 m'], reading: '35 fc', readAt: '2 m', distance: '3 m' },
];
