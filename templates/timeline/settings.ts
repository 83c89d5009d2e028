import { choice, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';

/** What was metered, how, and under which sun. */
export interface PlannedWatch {
  readonly point: string;
  readonly date: string;
  readonly latitude: string;
  readonly longitude: string;
  /** How far the clock there is ahead of universal time on that day. */
  readonly ahead: string;
}

export const tolerance = '$D$1';
export const sunrise = '$B$5';
export const sunset = '$D$5';
/** Receptor, speed and exposure time, as a reading is turned into an f-number with. */
export const metered = '$B$2,$D$2,$F$2';

const date = '$B$3';
const place = '$D$3,$F$3,$B$4';
const isNowhere = 'OR(ISBLANK($B$3),ISBLANK($D$3),ISBLANK($F$3),ISBLANK($B$4))';

/** To the minute, and on the clock without its date. */
export const onTheClock = (moment: string): string => `MOD(ROUND((${moment})*1440,0)/1440,1)`;

/** How high the sun stands at a time of that day. */
export const sunAt = (time: string): string =>
  `IF(${isNowhere},"",SUNALTITUDE(INT(${date})+MOD(${time},1),${place}))`;

const edge = (name: 'SUNRISE' | 'SUNSET'): PlannedCell => ({
  typed: `=IF(${isNowhere},"",IFERROR(${onTheClock(`${name}(${date},${place})`)},"none"))`,
  quantity: 'dateTime',
  align: 'left',
});

/** The first rows of the sheet. */
export const settings = (planned: PlannedWatch): Record<string, PlannedCell> => ({
  A1: words('Point'),
  B1: choice(planned.point, 'text'),
  C1: words('Tolerance'),
  D1: choice('1/3', 'stops'),
  A2: words('Receptor'),
  B2: { ...choice('dome', 'text'), note: 'dome, flat or spot.' },
  C2: words('at'),
  D2: choice('800', 'iso'),
  E2: words('and'),
  F2: { ...choice('1/50 s', 'time'), align: 'left' },
  A3: words('Date'),
  B3: { ...choice(planned.date, 'dateTime'), align: 'left' },
  C3: words('Latitude'),
  D3: { ...choice(planned.latitude, 'angle'), note: 'Degrees; north is positive, south negative.' },
  E3: words('Longitude'),
  F3: {
    ...choice(planned.longitude, 'angle'),
    align: 'left',
    note: 'Degrees; east is positive, west negative.',
  },
  A4: words('Ahead of UTC'),
  B4: {
    ...choice(planned.ahead, 'duration'),
    align: 'left',
    note: 'As the clock there stands on that day, summer time reckoned in.',
  },
  A5: words('Sunrise'),
  B5: edge('SUNRISE'),
  C5: words('Sunset'),
  D5: edge('SUNSET'),
});
