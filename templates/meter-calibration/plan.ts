import { buildBook } from '../build.ts';
import { choice, heading, numberHeading, remarks } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { captionRow, captions, letterOf, row, widths, type ColumnName } from './columns.ts';
import { asFNumber, asLux, metersHead, receptorOf, type PlannedMeter } from './meters.ts';
import { at, count, head, statistics } from './statistics.ts';

/** Two readings at one place, in one light. */
interface PlannedPair {
  readonly point: string;
  readonly first: string;
  readonly second: string;
  readonly note?: string;
}

/** Rows in which readings of the second meter are turned into those of the first. */
const turnedHead = head + count + 2;
const turnedRows = 5;

const metering = [
  'One steady light, both meters in turn on the same spot, facing the same way: leave them there and change the light, not the place.',
  'The same receptor on both, and lamps warm: with dome against flat the offset is the shape of the light as well.',
  'Pair dim and bright, warm and blue: an offset that grows from row to row is no offset but a fault. Look at From mean.',
  'The offset belongs to these two meters on this day. Put it into the record of a set-up as what the meter reads over, with the spread.',
  'No meter is right because it stands first: a calibration house says which.',
];

const cautions = [
  'Lamps get hot and bare ones hurt eyes: meter with your back to them, and let them cool before they are moved.',
];

function pairRow(rowAt: number, planned?: PlannedPair): Record<string, PlannedCell> {
  const is = (column: ColumnName): string => `${letterOf(column)}${rowAt}`;
  const where = (column: 'first' | 'second') =>
    `=IF(ISBLANK(${is(column)}),"",${asFNumber(is(column), column)})`;
  return row(rowAt, {
    point: choice(planned?.point ?? '', 'text'),
    first: { typed: planned?.first ?? '', role: 'reading' },
    second: { typed: planned?.second ?? '', role: 'reading' },
    offset: {
      typed: `=IF(OR(ISBLANK(${is('first')}),ISBLANK(${is('second')})),"",FSTOPS(${is('secondF')},${is('firstF')}))`,
      quantity: 'stops',
      decimals: 2,
    },
    fromMean: {
      typed: `=IF(OR(ISBLANK(${is('first')}),ISBLANK(${is('second')})),"",${is('offset')}-${at.mean})`,
      quantity: 'stops',
      decimals: 2,
    },
    firstF: { typed: where('first'), quantity: 'fNumber' },
    secondF: { typed: where('second'), quantity: 'fNumber' },
    note: { typed: planned?.note ?? '', quantity: 'text' },
  });
}

function turnedRow(rowAt: number, reading = ''): Record<string, PlannedCell> {
  const [read, would] = [`B${rowAt}`, `C${rowAt}`];
  return {
    [read]: { typed: reading, role: 'reading' },
    [would]: {
      typed: `=IF(ISBLANK(${read}),"",FNUMBERAT(${asFNumber(read, 'second')},-${at.taken}))`,
      quantity: 'fNumber',
    },
    [`D${rowAt}`]: {
      typed: `=IF(OR(ISBLANK(${read}),${receptorOf('first')}="spot"),"",${asLux(would, 'first')})`,
      quantity: 'illuminance',
      decimals: 0,
    },
  };
}

interface PlannedCalibration {
  readonly first: PlannedMeter;
  readonly second: PlannedMeter;
  readonly pairs: readonly PlannedPair[];
  readonly turned: readonly string[];
}

/** Two meters held against each other at the same places. */
const calibrationSheet = (planned: PlannedCalibration): PlannedSheet => ({
  name: 'Meter calibration',
  title: 'Meter calibration',
  purpose: 'How far one meter reads over another, and whether that can be told from the spread.',
  phase: 'meter',
  template: 'meter-calibration',
  frozenColumns: 1,
  widths,
  cells: {
    ...metersHead(planned.first, planned.second),
    ...statistics,
    ...captionRow(head, captions),
    ...Object.assign(
      {},
      ...Array.from({ length: count }, (_, index) =>
        pairRow(head + 1 + index, planned.pairs[index]),
      ),
    ),
    [`A${turnedHead}`]: heading('Second as the first'),
    [`B${turnedHead}`]: numberHeading('Second reads'),
    [`C${turnedHead}`]: numberHeading('First would read'),
    [`D${turnedHead}`]: numberHeading('in light'),
    ...Object.assign(
      {},
      ...Array.from({ length: turnedRows }, (_, index) =>
        turnedRow(turnedHead + 1 + index, planned.turned[index]),
      ),
    ),
    ...remarks('Metering', turnedHead + turnedRows + 2, metering),
    ...remarks('Cautions', turnedHead + turnedRows + 4 + metering.length, cautions),
  },
});

/** The two meters of the documentary, on the bench of the sail loft. Invented. */
const bench: PlannedCalibration = {
  first: { name: 'House meter', receptor: 'dome', constants: ['340', '250', '12.5'] },
  second: { name: 'Spare meter', receptor: 'dome', constants: ['330', '250', '12.5'] },
  pairs: [
    { point: 'Bench, full', first: '340 lx', second: 'f/4 2/10' },
    { point: 'two stops down', first: '85 lx', second: 'f/2 3/10' },
    { point: 'two stops up', first: '1360 lx', second: 'f/8 1/10' },
    { point: 'Door', first: '680 lx', second: 'f/5.6 2/10' },
    { point: 'Rope store', first: '170 lx', second: 'f/2.8 2/10' },
    { point: 'Window, blue', first: 'f/11', second: 'f/11 3/10' },
    { point: 'Bench again', first: '340 lx', second: '379 lx', note: 'both in lux' },
    { point: 'Loft, far end', first: 'f/2', second: 'f/2 1/10' },
  ],
  turned: ['f/4', 'f/8 1/2', '330 lx'],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [calibrationSheet(bench)] });
