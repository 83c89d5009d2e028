import { buildBook, planMeans } from '../build.ts';
import { choice, remarks } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { cautions, reckoning, rig, rigRange, rigTable, type PlannedLight } from '../rig.ts';
import { lampsOf } from '../set-plan/plan.ts';
import { shelve } from '../shelve.ts';

/** A backdrop as it hangs: its bottom edge on the plan, from left to right as seen from its lit side. */
export interface PlannedBackdrop {
  readonly left: readonly [x: number, y: number];
  readonly right: readonly [x: number, y: number];
  readonly bottom: number;
  readonly top: number;
  readonly ambient: string;
  readonly allowed: string;
}

/** Shares of the width, one for each column of the frame’s columns, and of the height. */
const across = [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1];
const gridColumns = [...'CDEFGHIJK'];
const down = [1, 0.75, 0.5, 0.25, 0];

const cornersHead = 11;
const settings = cornersHead + 1;
const figures = settings + 4;
const gridHead = figures + 4;
const firstRow = gridHead + 1;
const lastRow = gridHead + down.length;
const stopsHead = lastRow + 3;

const [x1, y1, x2, y2] = [
  `$C$${settings}`,
  `$D$${settings}`,
  `$C$${settings + 1}`,
  `$D$${settings + 1}`,
];
const [bottom, top] = [`$E$${settings}`, `$E$${settings + 2}`];
const [ambient, allowed, facing] = [`$I$${settings}`, `$I$${settings + 1}`, `$I$${settings + 2}`];
const grid = `$C$${firstRow}:$K$${lastRow}`;
const mean = `$C$${figures + 1}`;

const metres = (value: number): PlannedCell => choice(`${value} m`, 'length');

/** Three corners, a row each, as FIELDLUX takes them; the third stands over the first. */
function corners({ left, right, ...rest }: PlannedBackdrop): Record<string, PlannedCell> {
  const [one, two, three] = [settings, settings + 1, settings + 2];
  return {
    [`A${cornersHead - 1}`]: { typed: 'Backdrop, as seen from its lit side', bold: true },
    [`C${cornersHead}`]: { typed: 'x', bold: true, align: 'right' },
    [`D${cornersHead}`]: { typed: 'y', bold: true, align: 'right' },
    [`E${cornersHead}`]: { typed: 'z', bold: true, align: 'right' },
    [`B${one}`]: { typed: 'Lower left' },
    [`C${one}`]: metres(left[0]),
    [`D${one}`]: metres(left[1]),
    [`E${one}`]: metres(rest.bottom),
    [`B${two}`]: { typed: 'Lower right' },
    [`C${two}`]: metres(right[0]),
    [`D${two}`]: metres(right[1]),
    [`E${two}`]: { typed: `=E${one}`, quantity: 'length' },
    [`B${three}`]: { typed: 'Upper left' },
    [`C${three}`]: { typed: `=C${one}`, quantity: 'length' },
    [`D${three}`]: { typed: `=D${one}`, quantity: 'length' },
    [`E${three}`]: metres(rest.top),
    [`G${one}`]: { typed: 'Ambient on it' },
    [`I${one}`]: { ...choice(rest.ambient, 'illuminance'), role: 'reading' },
    [`G${two}`]: { typed: 'Spread allowed' },
    [`I${two}`]: choice(rest.allowed, 'stops'),
    [`G${three}`]: { typed: 'It faces' },
    [`I${three}`]: {
      typed: `=MOD(DEGREES(ATAN2(${x1}-${x2},${y2}-${y1})),360)`,
      quantity: 'angle',
      decimals: 0,
    },
  };
}

const result = (typed: string, quantity: PlannedCell['quantity']): PlannedCell => ({
  typed,
  ...(quantity && { quantity }),
  role: 'answer',
});

function outcome(): Record<string, PlannedCell> {
  const area = `$C$${settings}:$E$${settings + 2}`;
  const row = figures;
  return {
    [`A${row - 1}`]: { typed: 'What comes of it', bold: true },
    [`B${row}`]: { typed: 'Highest' },
    [`C${row}`]: result(`=MAX(${grid})`, 'illuminance'),
    [`B${row + 1}`]: { typed: 'Mean' },
    [`C${row + 1}`]: result(`=AVERAGE(${grid})`, 'illuminance'),
    [`B${row + 2}`]: { typed: 'Lowest' },
    [`C${row + 2}`]: result(`=MIN(${grid})`, 'illuminance'),
    [`G${row}`]: { typed: 'Spread' },
    [`I${row}`]: result(`=SPREAD(${grid})`, 'stops'),
    [`J${row}`]: {
      ...result(`=IF(I${row}<=${allowed},"even enough","not even enough")`, 'text'),
    },
    [`G${row + 1}`]: { typed: 'Lowest over mean' },
    [`I${row + 1}`]: { ...result(`=EVENNESS(${grid})`, 'ratio'), decimals: 2 },
    [`G${row + 2}`]: { typed: 'Spread, finely' },
    [`I${row + 2}`]: {
      ...result(`=FIELDSPREAD(${rigRange},${area},41,21,${ambient})`, 'stops'),
      note: 'Over 41 × 21 points: more than the grid says where a hot spot falls between its points.',
    },
  };
}

/** A heading of places along the backdrop and down it, and a cell for each point. */
function gridOf(
  head: number,
  title: string,
  cell: (column: string, row: number, index: number) => PlannedCell,
): Record<string, PlannedCell> {
  const cells: Record<string, PlannedCell> = {
    [`A${head - 1}`]: { typed: title, bold: true },
    [`B${head}`]: { typed: 'height', bold: true, align: 'right' },
  };
  for (const [index, column] of gridColumns.entries())
    cells[`${column}${head}`] = { typed: String(across[index]), quantity: 'share', bold: true };
  for (const [index, share] of down.entries()) {
    const row = head + 1 + index;
    cells[`B${row}`] = { typed: `=${bottom}+${share}*(${top}-${bottom})`, quantity: 'length' };
    for (const column of gridColumns) cells[`${column}${row}`] = cell(column, row, index);
  }
  return cells;
}

const at = (column: string, row: number): string => {
  const share = `${column}$${gridHead}`;
  return `${x1}+${share}*(${x2}-${x1}),${y1}+${share}*(${y2}-${y1}),$B${row}`;
};

/** How evenly a rig lights an upright backdrop or screen. */
export const backdropSheet = (
  planned: readonly PlannedLight[],
  backdrop: PlannedBackdrop,
): PlannedSheet => ({
  name: 'Backdrop',
  title: 'Backdrop',
  purpose: 'How evenly a backdrop or a screen is lit: highest, lowest, mean, and spread in stops.',
  phase: 'rig',
  template: 'backdrop',
  widths: rig.widths.map((width, index) => (index >= 2 && index <= 10 ? 92 : width)),
  cells: {
    ...rigTable(planned),
    ...corners(backdrop),
    ...outcome(),
    ...gridOf(
      gridHead,
      'Illuminance, from left to right and from top to bottom',
      (column, row) => ({
        typed: `=POINTLUX(${rigRange},${at(column, row)},${facing},0)+${ambient}`,
        quantity: 'illuminance',
        decimals: 0,
      }),
    ),
    ...gridOf(stopsHead, 'Stops from the mean', (column, _row, index) => ({
      typed: `=STOPS(${column}${firstRow + index},${mean})`,
      quantity: 'stops',
      decimals: 1,
    })),
    ...remarks('How it is reckoned', stopsHead + down.length + 2, [
      ...reckoning,
      'Flat receptors on the backdrop, square to it. A screen to be keyed is usually wanted within about half a stop: common practice, ask whoever keys it.',
    ]),
    ...remarks('Cautions', stopsHead + down.length + 5 + reckoning.length, cautions),
  },
  figures: [
    {
      kind: 'evenness',
      title: 'How even the backdrop is',
      cells: { values: `C${firstRow}:K${lastRow}` },
    },
  ],
});

/** Two open faces on a painted canvas, crossed a little. */
export const canvasLights: readonly PlannedLight[] = [
  {
    light: 'Left',
    fixture: 'Open face 800',
    at: [-2.4, 0.2, 2.9],
    aim: [-0.7, 3, 1.1],
    output: '50 %',
    diffusion: '1/2',
  },
  {
    light: 'Right',
    fixture: 'Open face 800',
    at: [2.4, 0.2, 2.9],
    aim: [0.7, 3, 1.1],
    output: '50 %',
    diffusion: '1/2',
  },
];

export const canvas: PlannedBackdrop = {
  left: [-2, 3],
  right: [2, 3],
  bottom: 0,
  top: 2.6,
  ambient: '2 lx',
  allowed: '1/2',
};

export function build() {
  const means = planMeans();
  const sheets = [backdropSheet(canvasLights, canvas)];
  const book = buildBook({ title: 'Untitled', sheets }, means);
  shelve(book, means, lampsOf(canvasLights));
  return book;
}
