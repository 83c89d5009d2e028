import { buildBook, planMeans } from '../build.ts';
import { choice, remarks } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import {
  cautions,
  figureRig,
  fixtureOf,
  lightColumns,
  nameOf,
  numberOf,
  placeAt,
  pointAt,
  pointCaptions,
  pointCells,
  reckoning,
  rig,
  rigRange,
  rigTable,
  type PlannedLight,
  type PlannedPoint,
} from '../rig.ts';
import { key, loftLights } from '../set-plan/loft.ts';
import { lampsOf } from '../set-plan/plan.ts';
import { shelve } from '../shelve.ts';

const rows = 6;
const head = 11;
const first = head + 1;
const last = head + rows;
const depthHead = last + 3;
const firstDepth = depthHead + 1;
const { letterOf } = rig;
const [dome, from, move, ambient] = (['aimZ', 'loss', 'output', 'roll'] as const).map(letterOf);
const on = letterOf('towardsY');

const once = (row: number, formula: string) =>
  `=IF(ISBLANK($${letterOf('x')}${row}),"",${formula})`;

function markRow(row: number, mark: PlannedMark | undefined): Record<string, PlannedCell> {
  const at = pointAt(row);
  const holds = (way: string) =>
    once(
      row,
      `IF(ISBLANK($${move}${row}),"",POINTHOLDS(${rigRange},${at},MOD($${move}${row}${way},360),,$${ambient}${row},"dome"))`,
    );
  const softness = lightColumns.map((column, index): [typeof column, PlannedCell] => [
    column,
    {
      typed: once(
        row,
        `IF(ISBLANK(${fixtureOf(index)}),"",POINTSOFTNESS(${rigRange},${numberOf(index)},${placeAt(row)}))`,
      ),
      quantity: 'angle',
      decimals: 0,
    },
  ]);
  return rig.row(row, {
    ...pointCells(mark),
    aimZ: {
      typed: once(row, `POINTDOME(${rigRange},${at})+$${ambient}${row}`),
      quantity: 'illuminance',
      decimals: 0,
    },
    output: choice(mark?.goes === undefined ? '' : `${mark.goes}°`, 'angle'),
    loss: {
      typed: once(row, `STOPS(${dome}${row},$${dome}$${first})`),
      quantity: 'stops',
      decimals: 1,
    },
    roll: { ...choice(mark ? (mark.ambient ?? '0 lx') : '', 'illuminance'), role: 'reading' },
    ...Object.fromEntries(softness),
    towardsY: { typed: holds(''), quantity: 'length', decimals: 1 },
    towardsZ: { typed: holds('+180'), quantity: 'length', decimals: 1 },
    diffusion: { typed: once(row, `VERDICT(${from}${row})`), quantity: 'verdict' },
  });
}

/** Nearest and farthest from each light that it holds, a row each, mark by mark. */
function depthRows(row: number, mark: number): Record<string, PlannedCell> {
  const edge = (name: string): Partial<Record<string, PlannedCell>> =>
    Object.fromEntries(
      lightColumns.map((column, index): [typeof column, PlannedCell] => [
        column,
        {
          typed: once(
            mark,
            `IF(ISBLANK(${fixtureOf(index)}),"",${name}(${rigRange},${numberOf(index)},${placeAt(mark)}))`,
          ),
          quantity: 'length',
          decimals: 1,
        },
      ]),
    );
  const end = (typed: string): PlannedCell => ({ typed, align: 'right' });
  return {
    ...rig.row(row, {
      fixture: {
        typed: `=IF(ISBLANK(${letterOf('fixture')}${mark}),"",${letterOf('fixture')}${mark})`,
        quantity: 'text',
      },
      roll: end('from'),
      ...edge('HOLDSFROM'),
    }),
    ...rig.row(row + 1, { roll: end('to'), ...edge('HOLDSTO') }),
  };
}

const lightNames = Object.fromEntries(lightColumns.map((column, index) => [column, nameOf(index)]));

const captions: Record<string, PlannedCell> = {
  [`A${head - 1}`]: { typed: 'Marks', bold: true },
  [`${letterOf('aimZ')}${head - 1}`]: { typed: 'The first mark is the reference', bold: true },
  [`${letterOf('width')}${head - 1}`]: { typed: 'Softness: how wide each light looks', bold: true },
  [`${on}${head - 1}`]: { typed: 'Whole rig holds', bold: true },
  ...rig.captionRow(head, {
    ...pointCaptions,
    fixture: 'Mark',
    aimZ: 'dome',
    output: 'goes to',
    loss: 'from first',
    roll: 'ambient',
    towardsY: 'onwards',
    towardsZ: 'back',
    diffusion: 'verdict',
  }),
  ...rig.row(head, lightNames),
  [`A${depthHead - 1}`]: {
    typed: 'Depth: distances from each light, metered facing it, between which it holds',
    bold: true,
  },
  ...rig.row(depthHead, { fixture: { typed: 'Mark', bold: true }, ...lightNames }),
};

/** A mark, and the azimuth that the actor goes on towards. */
export interface PlannedMark extends PlannedPoint {
  readonly goes?: number;
}

/** What an actor gets on the marks of a move, and how much room there is about each. */
export const marksSheet = (
  planned: readonly PlannedLight[],
  marks: readonly PlannedMark[],
): PlannedSheet => ({
  name: 'Marks',
  title: 'Marks',
  purpose: 'What an actor gets on each mark of a move, how soft it is, and how deep it holds.',
  phase: 'plan',
  template: 'marks',
  tolerance: 1 / 3,
  widths: rig.widths,
  cells: {
    ...rigTable(planned),
    ...captions,
    ...Object.assign(
      {},
      ...Array.from({ length: rows }, (_, index) => markRow(first + index, marks[index])),
      ...Array.from({ length: rows }, (_, index) =>
        depthRows(firstDepth + 2 * index, first + index),
      ),
    ),
    ...remarks('How it is reckoned', firstDepth + 2 * rows + 1, [
      ...reckoning,
      'Onwards and back: how far one may go towards “goes to”, and the other way, facing as on the mark, before the dome is off by more than the sheet’s tolerance; 20 m where it never is.',
    ]),
    ...remarks('Cautions', firstDepth + 2 * rows + reckoning.length + 4, [
      ...cautions,
      'Marks near a lamp or a stand are trip and burn hazards: keep cables off the move and rehearse it with the lamps on.',
    ]),
  },
  figures: [
    {
      kind: 'plan',
      title: 'The move from above',
      cells: {
        ...figureRig,
        points: `${letterOf('fixture')}${first}:${letterOf('aimY')}${last}`,
      },
    },
  ],
});

/** From the door to the chair, past the window. */
export const loftMove: readonly PlannedMark[] = [
  { point: 'Chair', at: [0, 0, 1.2], azimuth: -140, ambient: '8 lx', goes: 90 },
  { point: 'Rises', at: [0, -0.1, 1.6], azimuth: -140, ambient: '8 lx', goes: 90 },
  { point: 'Step to the bench', at: [0.8, 0.1, 1.6], azimuth: -140, ambient: '9 lx', goes: 75 },
  { point: 'At the bench', at: [1.7, 0.4, 1.6], azimuth: -140, ambient: '9 lx', goes: 75 },
];

/** Those of the set plan that reach the move. */
const lights = [key, ...loftLights.slice(1, 3)];

export function build() {
  const means = planMeans();
  const book = buildBook({ title: 'Untitled', sheets: [marksSheet(lights, loftMove)] }, means);
  shelve(book, means, lampsOf(lights));
  return book;
}
