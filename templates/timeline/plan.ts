import { buildBook } from '../build.ts';
import { choice, remarks } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { captionRow, captions, letterOf, row, widths, type ColumnName } from './columns.ts';
import { at, count, drift, firstOf, head } from './drift.ts';
import { metered, settings, sunAt, tolerance, type PlannedWatch } from './settings.ts';

/** What was read when. */
interface PlannedMoment {
  readonly time: string;
  readonly reading: string;
  readonly note?: string;
}

const reckoning = [
  'The first reading stands in the first row; the others follow within a day, past midnight too. In any unit of light, f-numbers as read.',
  'Drift is the straight line of least squares: a lamp that warms up, a battery and an evening sky bend. Off the line shows it; then keep the last readings only.',
  'It reads over by: where another meter was used, what it reads over the first one’s (see the sheet Meter calibration).',
  'Sun by date and place, to a minute or two on a level horizon; cloud and hills are not reckoned.',
];

const cautions = [
  'Never look at the sun through a viewfinder, a lens or binoculars, and never leave a lens turned to it.',
  'A lamp that drifts may be failing: let it cool, and have whoever is qualified look at lamp, lead and supply.',
];

function momentRow(rowAt: number, planned?: PlannedMoment): Record<string, PlannedCell> {
  const is = (column: ColumnName): string => `${letterOf(column)}${rowAt}`;
  const once = (formula: string): string =>
    `=IF(OR(ISBLANK(${is('time')}),ISBLANK(${is('reading')})),"",${formula})`;
  return row(rowAt, {
    time: { ...choice(planned?.time ?? '', 'dateTime'), align: 'left' },
    reading: { typed: planned?.reading ?? '', role: 'reading' },
    meter: choice('', 'text'),
    overBy: choice('', 'stops'),
    fromFirst: {
      typed: once(
        `FSTOPS(${is('asF')},${firstOf('asF')})-N(${is('overBy')})+N(${firstOf('overBy')})`,
      ),
      quantity: 'stops',
      decimals: 2,
    },
    verdict: {
      typed: once(`VERDICT(${is('fromFirst')},${tolerance})`),
      quantity: 'verdict',
    },
    sun: {
      typed: `=IF(ISBLANK(${is('time')}),"",${sunAt(is('time'))})`,
      quantity: 'angle',
      decimals: 1,
    },
    note: { typed: planned?.note ?? '', quantity: 'text' },
    hours: {
      typed: once(`MOD(${is('time')}-${firstOf('time')},1)*24`),
      quantity: 'number',
      decimals: 2,
    },
    line: {
      typed: once(`IF(${at.readings}<3,"",${at.start}+${is('hours')}*${at.drift})`),
      quantity: 'stops',
      decimals: 2,
    },
    offLine: {
      typed: once(`IF(${at.readings}<3,"",${is('fromFirst')}-${is('line')})`),
      quantity: 'stops',
      decimals: 2,
    },
    asF: {
      typed: `=IF(ISBLANK(${is('reading')}),"",READINGF(${is('reading')},${metered}))`,
      quantity: 'fNumber',
    },
  });
}

/** One point over the hours. */
const timelineSheet = (watch: PlannedWatch, moments: readonly PlannedMoment[]): PlannedSheet => ({
  name: 'Timeline',
  title: 'Timeline',
  purpose: 'How one point drifts over the hours, and when it leaves the tolerance.',
  phase: 'meter',
  template: 'timeline',
  frozenColumns: 1,
  widths,
  cells: {
    ...settings(watch),
    ...drift,
    ...captionRow(head, captions),
    ...Object.assign(
      {},
      ...Array.from({ length: count }, (_, index) => momentRow(head + 1 + index, moments[index])),
    ),
    ...remarks('How it is reckoned', head + count + 2, reckoning),
    ...remarks('Cautions', head + count + 4 + reckoning.length, cautions),
  },
});

/** A November afternoon at the invented harbour. */
const afternoon = timelineSheet(
  {
    point: 'Rope bench',
    date: '2026-11-24',
    latitude: '55°',
    longitude: '-1.5°',
    ahead: '0 h',
  },
  [
    { time: '13:00', reading: 'f/5.6', note: 'the light to match' },
    { time: '13:30', reading: 'f/5.6 -1/10' },
    { time: '14:00', reading: 'f/5.6 -3/10', note: 'thin cloud' },
    { time: '14:30', reading: 'f/5.6 -4/10' },
    { time: '15:00', reading: 'f/5.6 -7/10' },
  ],
);

export const build = () => buildBook({ title: 'Untitled', sheets: [afternoon] });
