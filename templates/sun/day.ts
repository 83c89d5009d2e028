import { heading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';

const place = '$B$2,$D$2,$D$3';
/** The day itself, should a time of day have been typed with it. */
const date = 'INT($B$1)';
const wanted = '$B$3';

/** Altitude or azimuth at a time of that day: a share of it, as spreadsheets count. */
export const altitudeAt = (time: string): string => `SUNALTITUDE(${date}+${time},${place})`;
export const azimuthAt = (time: string): string => `SUNAZIMUTH(${date}+${time},${place})`;

/** To the minute, and on the clock without its date: sunrise is known no better. */
const onTheClock = (moment: string): string => `MOD(ROUND((${moment})*1440,0)/1440,1)`;

export const timeOfDay = (moment: string): PlannedCell => ({
  typed: `=${onTheClock(moment)}`,
  quantity: 'dateTime',
});

const countingRow = 36;
const lowest = `$B$${countingRow + 1}`;
const cosine = `$B$${countingRow + 2}`;
const halfOfIt = `$B$${countingRow + 3}`;

/**
 * When the sun passes the wanted altitude: a first time from the circle it goes on, then put right
 * by what its real altitude is off there, at the rate at which it moves within ten minutes.
 */
function passes(
  estimate: string,
  otherwise: readonly [tooHigh: string, always: string],
): PlannedCell {
  const fiveMinutes = '5/1440';
  const rate = `(${altitudeAt(`${estimate}+${fiveMinutes}`)}-${altitudeAt(`${estimate}-${fiveMinutes}`)})`;
  const moment = `${estimate}+(${wanted}-${altitudeAt(estimate)})/${rate}*2*${fiveMinutes}`;
  const [tooHigh, always] = otherwise;
  return {
    typed: `=IF(${cosine}>1,"${tooHigh}",IF(${cosine}<-1,"${always}",${onTheClock(moment)}))`,
    quantity: 'dateTime',
  };
}

export const day = {
  sunrise: `SUNRISE($B$1,${place})`,
  sunset: `SUNSET($B$1,${place})`,
  /** Half-way between the two. */
  highestAt: '$B$6+MOD($D$6-$B$6,1)/2',
  highest: altitudeAt('$B$7'),
  aboveFrom: passes(`$B$7-${halfOfIt}`, ['not that high', 'all day']),
  aboveUntil: passes(`$B$7+${halfOfIt}`, ['', '']),
};

const sine = (angle: string): string => `SIN(RADIANS(${angle}))`;

/**
 * The sine of the altitude goes up and down with the cosine of the hour angle, between what it is at
 * the highest and, half a day away, at the lowest.
 */
export const counting: Readonly<Record<string, PlannedCell>> = {
  [`A${countingRow}`]: heading('How these times were counted'),
  [`A${countingRow + 1}`]: words('Lowest'),
  [`B${countingRow + 1}`]: { typed: `=${altitudeAt('$B$7-0.5')}`, decimals: 1 },
  [`A${countingRow + 2}`]: words('Hour angle, cosine'),
  [`B${countingRow + 2}`]: {
    typed: `=(2*${sine(wanted)}-${sine('$D$7')}-${sine(lowest)})/(${sine('$D$7')}-${sine(lowest)})`,
    quantity: 'number',
  },
  [`A${countingRow + 3}`]: words('as share of a day'),
  [`B${countingRow + 3}`]: {
    typed: `=DEGREES(ACOS(MAX(-1,MIN(1,${cosine}))))/360`,
    quantity: 'number',
  },
};
