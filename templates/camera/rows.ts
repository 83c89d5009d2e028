import type { PlannedCell } from '../plan.ts';
import { choice } from '../cells.ts';

/** What is decided for one camera, as it is typed. */
export interface PlannedCamera {
  readonly usedFor: string;
  readonly speed: string;
  readonly rate: string;
  /** An angle or a time. */
  readonly shutter: string;
  readonly filters: string;
  readonly stop: string;
  readonly white: string;
  readonly greySits: string;
  readonly above: string;
  readonly below: string;
}

/** The rows of a camera from the top; each camera has a column. */
const order = [
  'camera',
  'usedFor',
  'speed',
  'rate',
  'shutter',
  'filters',
  'stop',
  'white',
  'greySits',
  'above',
  'below',
  'comesHead',
  'time',
  'meterAt',
  'grey',
  'key',
  'clips',
  'sinks',
  'againstHead',
  'sets',
  'fromA',
  'wants',
  'inWords',
  'mains',
] as const;

export type RowName = (typeof order)[number];

export const rowOf = (name: RowName): number => order.indexOf(name) + 1;

/** The row of the meter’s constants: below the mains, a sentence for each camera and the advice. */
export const constantsRow = order.length + 7;

const fixed = {
  mains: `$B$${rowOf('mains')}`,
  spot: `$B$${constantsRow}`,
  dome: `$D$${constantsRow}`,
} as const;

export type CameraColumn = 'B' | 'C' | 'D';

interface Line {
  readonly label: string;
  cell(column: CameraColumn, camera: PlannedCamera): PlannedCell;
}

const at = (column: CameraColumn, name: RowName): string => `${column}${rowOf(name)}`;
const ofA = (name: RowName): string => `$B$${rowOf(name)}`;

/** Exposure index and time, as the exposure equation wants them. */
const metered = (column: CameraColumn): string => `${at(column, 'meterAt')},${at(column, 'time')}`;

/** "0.64 stop more": how much light a camera’s own stop wants against camera A’s. */
function inWords(column: CameraColumn): string {
  const off = at(column, 'wants');
  const size = `ROUND(ABS(${off}),2)`;
  return `=IF(${size}=0,"as camera A",${size}&IF(${size}>1," stops"," stop")&IF(${off}>0," more"," less"))`;
}

export const lines: Readonly<Partial<Record<RowName, Line>>> = {
  usedFor: {
    label: 'Used for',
    cell: (_, { usedFor }) => ({ ...choice(usedFor, 'text'), align: 'right' }),
  },
  speed: { label: 'Speed', cell: (_, { speed }) => choice(speed, 'iso') },
  rate: { label: 'Frame rate', cell: (_, { rate }) => choice(rate, 'frameRate') },
  shutter: {
    label: 'Shutter',
    cell: (_, { shutter }) => ({
      typed: shutter,
      role: 'choice',
      note: 'An angle or a time: 180° or 1/50 s.',
    }),
  },
  filters: { label: 'Filters lose', cell: (_, { filters }) => choice(filters, 'stops') },
  stop: {
    label: 'Stop or T-number',
    cell: (_, { stop }) => ({
      ...choice(stop, 'fNumber'),
      note: 'The taking stop; the T-number where the lens has one: it counts what the glass takes.',
    }),
  },
  white: { label: 'White', cell: (_, { white }) => choice(white, 'colourTemperature') },
  greySits: {
    label: 'Grey sits at',
    cell: (_, { greySits }) => ({
      ...choice(greySits, 'stops'),
      note: 'Where the camera is to put what the meter calls middle grey, from its own middle grey.',
    }),
  },
  above: { label: 'Holds above grey', cell: (_, { above }) => choice(above, 'stops') },
  below: { label: 'Holds below grey', cell: (_, { below }) => choice(below, 'stops') },
  time: {
    label: 'Exposure time',
    cell: (column) => ({ typed: `=EXPOSURETIME(${at(column, 'shutter')},${at(column, 'rate')})` }),
  },
  meterAt: {
    label: 'Meter at',
    cell: (column) => ({ typed: `=EIAFTER(${at(column, 'speed')},${at(column, 'filters')})` }),
  },
  grey: {
    label: 'Middle grey',
    cell: (column) => ({
      typed: `=SPOTLUMINANCE(${at(column, 'stop')},${metered(column)},${fixed.spot})`,
    }),
  },
  key: {
    label: 'Key on a dome',
    cell: (column) => ({
      typed: `=INCIDENTLUX(${at(column, 'stop')},${metered(column)},${fixed.dome})`,
    }),
  },
  clips: {
    label: 'Clips from',
    cell: (column) => ({
      typed: `=LEVELAT(${at(column, 'grey')},${at(column, 'above')}-${at(column, 'greySits')})`,
      quantity: 'luminance',
    }),
  },
  sinks: {
    label: 'Noise below',
    cell: (column) => ({
      typed: `=LEVELAT(${at(column, 'grey')},-(${at(column, 'below')}+${at(column, 'greySits')}))`,
      quantity: 'luminance',
    }),
  },
  sets: {
    label: 'Sets',
    cell: (column) => ({ typed: `=SPOTF(${ofA('grey')},${metered(column)},${fixed.spot})` }),
  },
  fromA: {
    label: 'From A’s stop',
    cell: (column) => ({ typed: `=FSTOPS(${at(column, 'sets')},${ofA('stop')})` }),
  },
  wants: {
    label: 'Its stop wants',
    cell: (column) => ({ typed: `=STOPS(${at(column, 'grey')},${ofA('grey')})` }),
  },
  inWords: {
    label: 'in words',
    cell: (column) => ({ typed: inWords(column), quantity: 'text', align: 'right' }),
  },
};

/** In words whether mains light flickers in this camera’s picture. */
export const flicker = (column: CameraColumn): PlannedCell => ({
  typed: `=FLICKERCHECK(${at(column, 'time')},${at(column, 'rate')},${fixed.mains})`,
  quantity: 'text',
});
