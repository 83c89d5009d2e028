import { buildBook } from '../build.ts';
import { choice, numberHeading, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { captionRow, captions, letterOf, widths } from './columns.ts';
import { dayCount, dayPlan, planHead, supplyTable, type PlannedSupply } from './days.ts';
import {
  budget,
  dayTable,
  down,
  head,
  hireRow,
  insurance,
  items,
  placesHead,
  type PlannedHire,
} from './rows.ts';

const reckoning = [
  'A week is charged as so many days; days over whole weeks cost no more than a week. A week’s rate, where there is one, goes before that.',
  'What is in the price of a package costs nothing of its own. The cost of a row is spread evenly over its days.',
  'What a place may give is what circuits or generator carry for hours, less what the house draws itself: read it off the sheet Power.',
  'Insurance is a share of the hire. Transport, tax, crew and what breaks are not in it: give them rows of their own.',
];

const captionNotes: Readonly<Record<string, PlannedCell>> = {
  [`${letterOf('days')}${head}`]: {
    ...numberHeading(captions.days),
    note: 'Both days count: the day it leaves the house and the day it comes back.',
  },
  [`${letterOf('week')}${head}`]: {
    ...numberHeading(captions.week),
    note: 'Where the house names one. Otherwise leave it empty: a week is charged as so many days.',
  },
};

export interface PlannedHires {
  readonly charged: string;
  readonly insurance: string;
  readonly budget: string;
  readonly places: readonly string[];
  readonly days: readonly string[];
  /** In the order of the places. */
  readonly supplies: readonly PlannedSupply[];
  readonly hires: readonly PlannedHire[];
}

const supplyHead = placesHead + dayCount + 4;
const remarksHead = planHead(supplyHead) + 3 * dayCount + 2;

const cautions = [
  'A planning aid only for what it draws: currents of unlike loads are added as numbers, and the circuits within a place are for the sheet Power. The local code and a qualified electrician decide.',
  'A generator stands outside, away from openings: its exhaust kills. Earthing it is a job for a competent person.',
];

/** What is hired, for where and how long, against the budget. */
export const hireSheet = (planned: PlannedHires): PlannedSheet => ({
  name: 'Hire',
  title: 'Hire',
  purpose:
    'What is hired for which place and day, what it draws and costs, and how far off the budget.',
  phase: 'order',
  template: 'hire',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('A week is charged as, days'),
    B1: choice(planned.charged, 'number'),
    C1: words('Insurance'),
    D1: choice(planned.insurance, 'share'),
    E1: words('Budget'),
    F1: choice(planned.budget, 'money'),
    A2: words('Mains'),
    B2: choice('230 V', 'voltage'),
    A3: words('Hire'),
    B3: { typed: `=SUM(${down('cost')})`, quantity: 'money' },
    C3: words('Insurance'),
    D3: { typed: `=B3*${insurance}`, quantity: 'money' },
    E3: words('In all'),
    F3: { typed: '=B3+D3', quantity: 'money' },
    A4: words('Against the budget'),
    B4: {
      typed: `=IF(F3<=${budget},TEXT(${budget}-F3,"0.00")&" left of the budget",TEXT(F3-${budget},"0.00")&" over the budget")`,
      quantity: 'text',
    },
    A5: words('Dearest day'),
    B5: {
      typed: `=TEXT(MAX(E${placesHead + 1}:E${placesHead + planned.days.length}),"0.00")&" on one day, "&MAX(F${placesHead + 1}:F${placesHead + planned.days.length})&" pieces out at most"`,
      quantity: 'text',
    },
    ...captionRow(head, captions),
    ...captionNotes,
    ...Object.assign(
      {},
      ...Array.from({ length: items }, (_, index) =>
        hireRow(head + 1 + index, planned.hires[index]),
      ),
    ),
    ...dayTable(planned.days, planned.places),
    ...supplyTable(supplyHead, planned.supplies),
    ...dayPlan(supplyHead),
    ...remarks('How it is counted', remarksHead, reckoning),
    ...remarks('Cautions', remarksHead + 2 + reckoning.length, cautions),
  },
});

/** Four days of the film at three places. Invented. */
export const film: PlannedHires = {
  charged: '3',
  insurance: '4 %',
  budget: '900',
  places: ['Sail loft', 'Boat shed', 'Ice house'],
  supplies: [
    { supply: 'house', carries: '20 A' },
    { supply: 'house', carries: '6 A' },
    { supply: 'generator', carries: '8 A' },
  ],
  days: [
    '2026-09-21',
    '2026-09-22',
    '2026-09-23',
    '2026-09-24',
    '2026-09-25',
    '2026-09-26',
    '2026-09-27',
  ],
  hires: [
    {
      item: 'Interview kit',
      place: 'Sail loft',
      count: '1',
      out: '2026-09-21',
      back: '2026-09-23',
      rate: '95',
      discount: '10 %',
    },
    {
      item: 'Soft panel',
      place: 'Sail loft',
      count: '2',
      out: '2026-09-21',
      back: '2026-09-23',
      rate: '45',
      package: 'Interview kit',
      watts: '300 W',
      powerFactor: '0.95',
    },
    {
      item: 'Fresnel 650',
      place: 'Sail loft',
      count: '2',
      out: '2026-09-21',
      back: '2026-09-23',
      rate: '18',
      watts: '650 W',
      powerFactor: '1',
    },
    {
      item: 'Open face 800',
      place: 'Boat shed',
      count: '2',
      out: '2026-09-23',
      back: '2026-09-25',
      rate: '15',
      watts: '800 W',
      powerFactor: '1',
    },
    {
      item: 'Frame 120 × 120 and cloths',
      place: 'Boat shed',
      count: '1',
      out: '2026-09-23',
      back: '2026-09-27',
      rate: '12',
      week: '40',
    },
    {
      item: 'Tube 120',
      place: 'Ice house',
      count: '4',
      out: '2026-09-25',
      back: '2026-09-27',
      rate: '20',
      watts: '50 W',
      powerFactor: '0.6',
    },
    {
      item: 'Battery 150 Wh',
      place: 'Ice house',
      count: '6',
      out: '2026-09-25',
      back: '2026-09-27',
      rate: '6',
    },
  ],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [hireSheet(film)] });
