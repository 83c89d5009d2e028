import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedSheet } from '../plan.ts';
import { letterOf, widths, type ColumnName } from './columns.ts';
import { harbourRunning } from './harbour.ts';
import { listTable } from './list.ts';
import { orderTable } from './order.ts';
import type { PlannedRunning } from './planned.ts';
import { list, order } from './rows.ts';

const reckoning = [
  'Under each light stands where it is in that set-up, in your own words; the same word is the same place, no word is no light.',
  'A change is counted in moves: a light that is rigged, struck or stands elsewhere is one. At another place everything is struck and rigged anew, and the last rig is struck too.',
  'What would end after the day does begins with the next one, at the same time. Without the hours of a day it goes on through the night.',
  'Shot as is yours: number the set-ups and see what the order costs. Set-ups that share a rig are best shot one after the other.',
  'The command Order the set-ups by their light numbers them so that they take the fewest hours, and of equal hours the fewest moves; up to fifteen it is the best order there is. Write yes under Stays where one has to be shot as the how-manieth it is: for daylight, tide or people.',
];

const cautions = [
  'Hours are yours and not a promise: rigging overhead, in wind, on water or at night takes its own time, and nobody hurries on a ladder.',
  'Breaks and rest are for the working rules where you are: put them in as set-ups with the lights of the one before, so that nothing is struck for them.',
];

const sum = (column: ColumnName, { first, last }: typeof list) =>
  `SUM(${letterOf(column)}${first}:${letterOf(column)}${last})`;
/** All that is rigged is struck in the end, the last rig too. */
const movesIn = (rows: typeof list) => `(2*${sum('rigged', rows)}+${sum('moved', rows)})`;
const hoursIn = `(${sum('hours', order)}+(${sum('rigged', order)}-${sum('struck', order)})*$D$2)`;

/** The set-ups in the order of their light. */
export const runningSheet = (planned: PlannedRunning): PlannedSheet => ({
  name: 'Running order',
  title: 'Running order of light',
  purpose: 'Which set-ups share a rig, and what each order costs in moves and hours.',
  phase: 'plan',
  template: 'running-order',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('Begins'),
    B1: choice(planned.begins, 'dateTime'),
    C1: words('a day has'),
    D1: choice('11 h', 'duration'),
    A2: words('To rig a light takes'),
    B2: choice('0.4 h', 'duration'),
    C2: words('to strike'),
    D2: choice('0.2 h', 'duration'),
    E2: words('to move'),
    F2: choice('0.25 h', 'duration'),
    G2: words('to travel'),
    H2: choice('2 h', 'duration'),
    A3: words('In this order'),
    B3: {
      typed: `=${movesIn(order)}&" moves, "&TEXT(${hoursIn},"0.0")&" h to rig, strike and travel; as listed "&${movesIn(list)}&" moves"`,
      quantity: 'text',
    },
    ...listTable(planned),
    ...orderTable(),
    ...remarks('How it is counted', order.last + 2, reckoning),
    ...remarks('Cautions', order.last + 4 + reckoning.length, cautions),
  },
});

export const build = () => buildBook({ title: 'Untitled', sheets: [runningSheet(harbourRunning)] });
