import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, letterOf, row, type ColumnName } from './columns.ts';

type Cells = Record<string, PlannedCell>;

/** Where the tables stand, heads and how many rows each has. */
const table = (head: number, rows: number) => ({ head, first: head + 1, last: head + rows });
export const places = table(3, 4);
export const windows = table(places.last + 2, 8);
export const circuits = table(windows.last + 2, 8);
export const surfaces = table(circuits.last + 2, 8);
export const lampsOff = table(surfaces.last + 2, 8);

export const settings = {
  volts: '$B$1',
  share: '$E$1',
  meterAt: '$H$1',
  time: '$K$1',
  ground: '$O$1',
} as const;

/** A setting of the place in this row of a table: what stands in a column of the places. */
export const ofPlace = (column: ColumnName, at: number): string =>
  `INDEX($${letterOf(column)}$${places.first}:$${letterOf(column)}$${places.last},$${letterOf('at')}${at})`;

/** Where the places have what; their table shares the columns of the windows. */
export const held = {
  day: 'place',
  access: 'words',
  time: 'width',
  latitude: 'height',
  longitude: 'sill',
  ahead: 'bearing',
  overcast: 'skyline',
  ceiling: 'sideways',
  altitude: 'markOff',
  azimuth: 'markAside',
  openSky: 'sky',
} as const satisfies Record<string, ColumnName>;

export interface PlannedPlace {
  readonly place: string;
  readonly day: string;
  readonly access: string;
  readonly time: string;
  readonly latitude: string;
  readonly longitude: string;
  readonly ahead: string;
  readonly sky: 'clear' | 'overcast';
  readonly ceiling: string;
}

function placeRow(at: number, planned?: PlannedPlace): Cells {
  const is = (column: keyof typeof held) => `${letterOf(held[column])}${at}`;
  const once = (formula: string) => `=IF(ISBLANK(A${at}),"",${formula})`;
  const there = `INT(${is('day')})+MOD(${is('time')},1),${is('latitude')},${is('longitude')},${is('ahead')}`;
  const { altitude, azimuth, openSky } = held;
  return row(at, {
    name: choice(planned?.place ?? '', 'text'),
    place: choice(planned?.day ?? '', 'dateTime'),
    words: choice(planned?.access ?? '', 'text'),
    width: choice(planned?.time ?? '', 'dateTime'),
    height: choice(planned?.latitude ?? '', 'angle'),
    sill: choice(planned?.longitude ?? '', 'angle'),
    bearing: choice(planned?.ahead ?? '', 'duration'),
    skyline: { ...choice(planned?.sky ?? '', 'text'), align: 'right' },
    sideways: choice(planned?.ceiling ?? '', 'length'),
    [altitude]: { typed: once(`SUNALTITUDE(${there})`), quantity: 'angle', decimals: 1 },
    [azimuth]: { typed: once(`SUNAZIMUTH(${there})`), quantity: 'angle', decimals: 0 },
    [openSky]: {
      typed: once(
        `IF(${is('altitude')}>0,ROUND(SKYLUX(MAX(0,${is('altitude')}),IF(${is('overcast')}="overcast",1,0)),-2),ROUND(SUNLUX(${is('altitude')}),0))`,
      ),
      quantity: 'illuminance',
    },
  });
}

export const placeTable = (planned: readonly PlannedPlace[]): Cells => ({
  ...captionRow(places.head, {
    name: 'Place',
    place: 'Day',
    words: 'Access and parking',
    width: 'Looked at',
    height: 'Latitude',
    sill: 'Longitude',
    bearing: 'Ahead of UTC',
    skyline: 'Sky',
    sideways: 'Ceiling',
    markOff: 'Sun stands',
    markAside: 'in',
    sky: 'Open sky',
  }),
  ...Object.assign(
    {},
    ...Array.from({ length: places.last - places.head }, (_, index) =>
      placeRow(places.first + index, planned[index]),
    ),
  ),
});
