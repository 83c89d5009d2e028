import { buildBook, planMeans } from '../build.ts';
import { choice, remarks } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import {
  cautions,
  figureRig,
  fixtureOf,
  lightColumns,
  lights,
  nameOf,
  numberOf,
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
import { shelve } from '../shelve.ts';
import { loftLights, loftPoints } from './loft.ts';

/** Rows of points, and where they begin: under the lights. */
const rows = 8;
const head = 11;
const first = head + 1;
const last = head + rows;
const { letterOf } = rig;
const [dome, from, ambient] = (['aimZ', 'loss', 'roll'] as const).map(letterOf);
const ambientShare = 'towardsY';

/** Blank until the point has its place. */
const once = (row: number, formula: string) =>
  `=IF(ISBLANK($${letterOf('x')}${row}),"",${formula})`;

function pointRow(row: number, point: PlannedPoint | undefined): Record<string, PlannedCell> {
  const at = pointAt(row);
  const share = (which: string) =>
    `POINTSHARE(${rigRange},${which},${at},$${ambient}${row},"dome")`;
  const shares = lightColumns.map((column, index): [typeof column, PlannedCell] => [
    column,
    {
      typed: once(row, `IF(ISBLANK(${fixtureOf(index)}),"",${share(numberOf(index))})`),
      quantity: 'share',
      decimals: 0,
    },
  ]);
  return rig.row(row, {
    ...pointCells(point),
    aimZ: {
      typed: once(row, `POINTDOME(${rigRange},${at})+$${ambient}${row}`),
      quantity: 'illuminance',
      decimals: 0,
    },
    output: {
      typed: once(row, `POINTLUX(${rigRange},${at})`),
      quantity: 'illuminance',
      decimals: 0,
    },
    loss: {
      typed: once(row, `STOPS(${dome}${row},$${dome}$${first})`),
      quantity: 'stops',
      decimals: 1,
    },
    roll: { ...choice(point ? (point.ambient ?? '0 lx') : '', 'illuminance'), role: 'reading' },
    ...Object.fromEntries(shares),
    [ambientShare]: { typed: once(row, share('0')), quantity: 'share', decimals: 0 },
    diffusion: choice(point?.wanted ?? '', 'stops'),
    gel: {
      typed: `=IF(OR(ISBLANK($${letterOf('x')}${row}),ISBLANK(${letterOf('diffusion')}${row})),"",VERDICT(${from}${row}-${letterOf('diffusion')}${row}))`,
      quantity: 'verdict',
    },
  });
}

const captions: Record<string, PlannedCell> = {
  [`A${head - 1}`]: { typed: 'Points', bold: true },
  [`${letterOf('aimZ')}${head - 1}`]: { typed: 'The first point is the key', bold: true },
  [`${letterOf('width')}${head - 1}`]: { typed: 'Share of what the dome reads', bold: true },
  ...rig.captionRow(head, {
    ...pointCaptions,
    aimZ: 'dome',
    output: 'flat, rig',
    loss: 'from key',
    roll: 'ambient',
    [ambientShare]: 'ambient',
    diffusion: 'wanted',
    gel: 'verdict',
  }),
  ...rig.row(
    head,
    Object.fromEntries(lightColumns.map((column, index) => [column, nameOf(index)])),
  ),
};

/** Where everything stands, and what each point of the set gets of it. */
export const setPlan = (
  planned: readonly PlannedLight[],
  points: readonly PlannedPoint[],
): PlannedSheet => ({
  name: 'Set plan',
  title: 'Set plan',
  purpose: 'Where each light stands and is aimed, and what every point of the set gets of it.',
  phase: 'rig',
  template: 'set-plan',
  widths: rig.widths,
  cells: {
    ...rigTable(planned),
    ...captions,
    ...Object.assign(
      {},
      ...Array.from({ length: rows }, (_, index) => pointRow(first + index, points[index])),
    ),
    ...remarks('How it is reckoned', last + 2, [
      ...reckoning,
      'Dome: ambient as its own reading, and the rig by a cardioid, (1 + cos) / 2, for the hemispherical receptor of ISO 2720. Flat: the rig alone, by the cosine.',
    ]),
    ...remarks('Cautions', last + 4 + reckoning.length + 1, cautions),
  },
  figures: (['plan', 'section'] as const).map((kind) => ({
    kind,
    title: kind === 'plan' ? 'From above' : 'From the front',
    cells: {
      ...figureRig,
      points: `${letterOf('fixture')}${first}:${letterOf('aimY')}${last}`,
    },
  })),
});

/** The lamps that stand on the plan. */
export const lampsOf = (planned: readonly PlannedLight[]): readonly string[] =>
  planned.map(({ fixture }) => fixture);

export function build() {
  if (loftLights.length > lights) throw new Error('More lights than the sheet has rows.');
  const means = planMeans();
  const sheets = [setPlan(loftLights, loftPoints)];
  const book = buildBook({ title: 'Untitled', sheets }, means);
  shelve(book, means, lampsOf(loftLights));
  return book;
}
