import { buildBook } from '../build.ts';
import { heading, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { at, camera } from './camera.ts';
import { captions, head, spotRow, widths, type PlannedSpot } from './rows.ts';
import { signalTable, startingTable, tableOf, type SignalRow } from './signal.ts';

export interface PlannedSurvey {
  readonly name: string;
  readonly tolerance?: number;
  readonly spots: readonly PlannedSpot[];
  readonly signal: readonly SignalRow[];
  /** Beside the table of signal levels: where it comes from. */
  readonly about: readonly string[];
}

const measuring = [
  'Shoot a grey card in steady light at whole stops from the metered one, down to noise and up to',
  'clipping, and write what the waveform shows. It holds for one camera, one speed and one curve.',
];

const cautions = [
  'A spot meter sees a small circle: turn it away from glare, and stand where the camera stands.',
  'Never aim a meter, a viewfinder or a lens at the sun: it burns eyes and sensors. Bare lamps hurt eyes too.',
  'Lamps get hot and stands fall while you walk about with a meter: look where you step. Local codes apply.',
];

/** Beside the table, so that the sheet stays short. */
function remarks(row: number, about: readonly string[]): Record<string, PlannedCell> {
  const lines: readonly PlannedCell[] = [
    heading('Your own table'),
    ...[...about, ...measuring].map(words),
    heading('Cautions'),
    ...cautions.map(words),
  ];
  return Object.fromEntries(lines.map((line, index) => [`D${String(row + index)}`, line]));
}

/** Spot readings against what the taking stop puts at grey, and the signal they come to. */
export function surveySheet(planned: PlannedSurvey): PlannedSheet {
  const { name, tolerance, spots, signal, about } = planned;
  const last = head + spots.length;
  const rows = (letter: string) => `${letter}${String(head + 1)}:${letter}${String(last)}`;
  const table = { head: last + 2, rows: signal.length };
  return {
    name,
    title: name,
    purpose: 'Where each tone of the frame falls in the camera, and what signal it gives.',
    phase: 'plan',
    template: 'reflected-survey',
    ...(tolerance !== undefined && { tolerance }),
    frozenColumns: 1,
    widths,
    cells: {
      ...camera(rows('C')),
      ...captions,
      ...Object.assign({}, ...spots.map((spot, index) => spotRow(spot, index, table))),
      ...signalTable(signal, table),
      ...remarks(table.head, about),
    },
    figures: [
      {
        kind: 'ladder',
        title: 'Tones in the camera',
        cells: {
          points: rows('A'),
          read: rows('D'),
          wanted: rows('B'),
          level: at.grey,
          above: at.above,
          below: at.below,
          greySits: at.greySits,
          signal: tableOf(table),
        },
        options: { zero: 'grey' },
      },
    ],
  };
}

const sheet = surveySheet({
  name: 'Reflected survey',
  spots: [
    { point: 'Brightest in frame' },
    { point: 'Window or sky', wanted: '+4' },
    { point: 'White in the light', wanted: '+2 1/2' },
    { point: 'Face, key side', wanted: '+1' },
    { point: 'Grey card at face', wanted: '0' },
    { point: 'Face, fill side', wanted: '-1' },
    { point: 'Background left', wanted: '-2' },
    { point: 'Background right', wanted: '-2' },
    { point: 'Darkest in frame', wanted: '-4' },
  ],
  signal: startingTable,
  about: [
    'To begin with: hybrid log-gamma (ITU-R BT.2100) with grey at 38 % (ITU-R BT.2408). Write your camera’s over it.',
  ],
});

export const build = () => buildBook({ title: 'Untitled', sheets: [sheet] });
