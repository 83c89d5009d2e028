import { heading, numberHeading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { altitudeAt, azimuthAt, timeOfDay } from './day.ts';

/** Rows through the day: from before the summer’s sunrise to its sunset, an hour apart. */
export const hours = 18;

const winds = [
  'north',
  'north-east',
  'east',
  'south-east',
  'south',
  'south-west',
  'west',
  'north-west',
];

export const captions = (row: number): Record<string, PlannedCell> => ({
  [`A${row}`]: numberHeading('Time'),
  [`B${row}`]: numberHeading('Altitude'),
  [`C${row}`]: numberHeading('Azimuth'),
  [`D${row}`]: heading('Stands in the'),
  [`E${row}`]: numberHeading('Clear-sky light'),
  [`F${row}`]: numberHeading('From highest'),
  [`G${row}`]: numberHeading('Shadow of 1 m'),
});

export function hourRow(row: number, first: boolean): Record<string, PlannedCell> {
  const [time, altitude, azimuth] = [`A${row}`, `B${row}`, `C${row}`];
  const light = `SUNLUX(${altitude})`;
  return {
    [time]: timeOfDay(first ? '$B$4' : `A${row - 1}+$D$4`),
    [altitude]: { typed: `=${altitudeAt(time)}`, decimals: 1 },
    [azimuth]: { typed: `=${azimuthAt(time)}`, decimals: 0 },
    [`D${row}`]: {
      typed: `=IF(${altitude}<0,"below horizon",CHOOSE(MOD(ROUND(${azimuth}/45,0),8)+1,${winds.map((wind) => `"${wind}"`).join(',')}))`,
      quantity: 'text',
    },
    // Two figures: the model is good to about a stop.
    [`E${row}`]: {
      typed: `=ROUND(${light},1-INT(LOG10(MAX(${light},0.01))))`,
      quantity: 'illuminance',
    },
    [`F${row}`]: { typed: `=STOPS(${light},SUNLUX($D$7))`, decimals: 1 },
    [`G${row}`]: {
      typed: `=IF(${altitude}>0,1/TAN(RADIANS(${altitude})),"")`,
      quantity: 'length',
      decimals: 2,
    },
  };
}
