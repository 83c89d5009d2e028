import { buildBook } from '../build.ts';
import { choice, given, heading, numberHeading, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import {
  constantsRow,
  flicker,
  lines,
  rowOf,
  type CameraColumn,
  type PlannedCamera,
  type RowName,
} from './rows.ts';

type Cells = Record<string, PlannedCell>;

const columnOf: Readonly<Record<'A' | 'B' | 'C', CameraColumn>> = { A: 'B', B: 'C', C: 'D' };
const names = Object.keys(columnOf) as (keyof typeof columnOf)[];

const advice = [
  'Reckoned for light that swings all the way with the mains. LED on a dimmer pulse at a rate of their own,',
  'and a rolling shutter shows bands where a whole frame looks steady. Shoot a test under the lamps of the day.',
];

/** The rows that each camera fills in its own column. */
function cameraRows(cameras: Readonly<Record<keyof typeof columnOf, PlannedCamera>>): Cells {
  const cells: Cells = {};
  for (const [name, { label, cell }] of Object.entries(lines)) {
    const row = rowOf(name as RowName);
    cells[`A${row}`] = words(label);
    for (const camera of names)
      cells[`${columnOf[camera]}${row}`] = cell(columnOf[camera], cameras[camera]);
  }
  return cells;
}

function flickerRows(): Cells {
  const mains = rowOf('mains');
  const cells: Cells = {
    [`A${mains}`]: heading('Flicker on mains of'),
    [`B${mains}`]: { ...choice('50 Hz', 'frequency'), align: 'left' },
  };
  for (const [index, camera] of names.entries()) {
    cells[`A${mains + 1 + index}`] = words(`Camera ${camera}`);
    cells[`B${mains + 1 + index}`] = flicker(columnOf[camera]);
  }
  for (const [index, line] of advice.entries())
    cells[`A${mains + 1 + names.length + index}`] = words(line);
  return cells;
}

/** Three cameras side by side, and what their settings come to. */
export const cameraSheet = (
  cameras: Readonly<Record<keyof typeof columnOf, PlannedCamera>>,
): PlannedSheet => ({
  name: 'Camera',
  title: 'Camera',
  purpose: 'What each camera is set to, what its stop puts at grey, and how they compare.',
  phase: 'plan',
  template: 'camera',
  frozenColumns: 1,
  widths: [212, 172, 172, 172],
  cells: {
    A1: heading('Camera'),
    ...Object.fromEntries(names.map((name) => [`${columnOf[name]}1`, numberHeading(name)])),
    ...cameraRows(cameras),
    [`A${rowOf('comesHead')}`]: heading('What comes of it'),
    [`A${rowOf('againstHead')}`]: heading('In the light that camera A is set for'),
    ...flickerRows(),
    [`A${constantsRow}`]: words('Spot constant K'),
    [`B${constantsRow}`]: given('12.5', 'number'),
    [`C${constantsRow}`]: { ...words('Dome constant C'), align: 'right' },
    [`D${constantsRow}`]: given('340', 'number'),
  },
});

const interview: PlannedCamera = {
  usedFor: 'interview',
  speed: '800',
  rate: '25',
  shutter: '180°',
  filters: '0',
  stop: 'f/2.8',
  white: '3200 K',
  greySits: '0',
  above: '6.5',
  below: '4.5',
};

/** As the template starts: one at the key, one beside it, one for slow motion. */
export const cameras = {
  A: interview,
  B: { ...interview, usedFor: 'wide', speed: '1250', shutter: '1/50 s' },
  C: {
    ...interview,
    usedFor: 'slow motion',
    speed: '1250',
    rate: '100',
    greySits: '1',
    above: '6',
    below: '5',
  },
} as const;

export const build = () => buildBook({ title: 'Untitled', sheets: [cameraSheet(cameras)] });
