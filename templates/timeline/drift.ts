import { heading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { letterOf, type ColumnName } from './columns.ts';
import { onTheClock, sunrise, sunset, tolerance } from './settings.ts';

/** Row of the captions of the readings, and how many there is room for. */
export const head = 11;
export const count = 16;

export const firstOf = (column: ColumnName): string => `$${letterOf(column)}$${head + 1}`;

const down = (column: ColumnName): string =>
  `${firstOf(column)}:$${letterOf(column)}$${head + count}`;

/** Where the results stand that rows and sentence ask for. */
export const at = {
  drift: '$B$7',
  start: '$D$7',
  scatter: '$F$7',
  apart: '$B$8',
  leaves: '$D$8',
  readings: '$F$8',
} as const;

const stops = (typed: string): PlannedCell => ({ typed, quantity: 'stops', decimals: 2 });

const [hours, off] = [down('hours'), down('fromFirst')];
const once = (formula: string, least = 3): string => `=IF(${at.readings}<${least},"",${formula})`;
const isTold = `ABS(${at.drift})>${at.apart}`;

/** Hours after the first reading at which the line meets the tolerance, in the way it goes. */
const hoursToEdge = `MAX(0,(SIGN(${at.drift})*${tolerance}-${at.start})/${at.drift})`;

const sun = `IF(ISNUMBER(${sunset}),IF(ISNUMBER(${sunrise})," The sun rises at "&TEXT(${sunrise},"hh:mm")&" and sets at "&TEXT(${sunset},"hh:mm")&".",""),"")`;

const way = `IF(${at.drift}>0,"Up ","Down ")`;

const sentence =
  `=IF(${at.readings}<3,"Three readings at least, with their times, say how the point drifts.",` +
  `IF(NOT(${isTold}),"No drift can be told from the scatter: less than "&TEXT(${at.apart},"0.00")&" stop an hour.",` +
  `${way}&TEXT(ABS(${at.drift}),"0.00")&" stop an hour; "&IF(ISNUMBER(${at.leaves}),"the tolerance of "&STOPWORDS(${tolerance})&" is left at "&TEXT(${at.leaves},"hh:mm")&".","the tolerance of "&STOPWORDS(${tolerance})&" holds for a day."))` +
  `&${sun})`;

/** The straight line through the readings by least squares, and where it leaves the tolerance. */
export const drift: Readonly<Record<string, PlannedCell>> = {
  A6: heading('In a sentence'),
  B6: { typed: sentence, quantity: 'text' },
  A7: words('Drift an hour'),
  B7: {
    ...stops(once(`SLOPE(${off},${hours})`)),
    align: 'left',
    note: 'The slope of the straight line through stops against hours by least squares.',
  },
  C7: words('Line begins at'),
  D7: {
    ...stops(once(`AVERAGE(${off})-${at.drift}*AVERAGE(${hours})`)),
    note: 'What the line gives at the time of the first reading, in stops from it.',
  },
  E7: words('Scatter'),
  F7: {
    ...stops(once(`SQRT(SUMSQ(${down('offLine')})/(${at.readings}-2))`)),
    align: 'left',
    note: 'The standard deviation of the readings about the line, with their number less two.',
  },
  A8: words('Told apart from'),
  B8: {
    ...stops(once(`ROUND(TINV(0.05,${at.readings}-2),2)*${at.scatter}/SQRT(DEVSQ(${hours}))`)),
    align: 'left',
    note: 'Student’s t for 95 in 100 (JCGM 100, table G.2), times the standard deviation of the slope.',
  },
  C8: words('Tolerance left at'),
  D8: {
    typed: once(
      `IF(NOT(${isTold}),"",IF(${hoursToEdge}>24,"",${onTheClock(`${firstOf('time')}+${hoursToEdge}/24`)}))`,
    ),
    quantity: 'dateTime',
  },
  E8: words('Readings'),
  F8: { typed: `=COUNT(${off})`, quantity: 'number', align: 'left' },
  A9: words('Drifted so far'),
  B9: {
    ...stops(`=IF(${at.readings}=0,"",INDEX(${off},MATCH(MAX(${hours}),${hours},0)))`),
    align: 'left',
    note: 'The latest reading against the first.',
  },
};
