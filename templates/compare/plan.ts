import { buildBook } from '../build.ts';
import { choice, heading, numberHeading, remarks, words } from '../cells.ts';
import type { PlannedSheet } from '../plan.ts';
import { captionRow, captions, letterOf, widths } from './columns.ts';
import { orderHead, orderTable } from './order.ts';
import { cheapest, count, down, head, optionRow, type PlannedOption } from './rows.ts';

const reckoning = [
  'By the inverse square from one reading: true from about five times the widest side of a soft source. Nearer, type what was read or computed there, with the same distance twice.',
  'Reached is in the middle of the beam. Covers is as wide as the angle says; the rim gets a half of it for a beam, a tenth for a field.',
  'Cost is hire for the days, crew and transport as typed, and energy. Without insurance and tax.',
];

const cautions = [
  'Heat, weight and glare are no columns here: ask who rigs it what the ceiling, the stand and the people under it can take.',
  'A planning aid only for what it draws: the local code and a qualified electrician decide.',
];

const fieldNote =
  'Out to where it still gives a tenth; for the width within a stop, type the beam.';

export interface PlannedComparison {
  readonly stop: string;
  readonly speed: string;
  readonly time: string;
  readonly width: string;
  readonly days: string;
  readonly charged: string;
  readonly options: readonly PlannedOption[];
}

/** Options side by side: light, width, power and cost, and which of them is enough. */
export const compareSheet = (planned: PlannedComparison): PlannedSheet => ({
  name: 'Compare',
  title: 'Compare',
  purpose: 'Which fixtures at which distance are enough, what they draw and what they cost.',
  phase: 'order',
  template: 'compare',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('Stop wanted'),
    B1: { ...choice(planned.stop, 'fNumber'), align: 'left' },
    C1: words('at'),
    D1: choice(planned.speed, 'iso'),
    E1: words('and'),
    F1: choice(planned.time, 'time'),
    A2: words('Light wanted'),
    B2: { typed: '=INCIDENTLUX(B1,D1,F1)', quantity: 'illuminance', decimals: 0, align: 'left' },
    C2: words('Width'),
    D2: choice(planned.width, 'length'),
    E2: words('within'),
    F2: { ...choice('1/3', 'stops'), note: 'How far short an option may be and still be enough.' },
    A3: words('Mains'),
    B3: { ...choice('230 V', 'voltage'), align: 'left' },
    C3: words('Breaker'),
    D3: choice('16 A', 'current'),
    E3: words('of it'),
    F3: { ...choice('80 %', 'share'), note: 'What a load of hours may take: a local rule.' },
    A4: words('Days of hire'),
    B4: { ...choice(planned.days, 'number'), align: 'left' },
    C4: words('A week as'),
    D4: { ...choice(planned.charged, 'number'), note: 'Days that a week is charged as.' },
    E4: words('Lit, a day'),
    F4: choice('8 h', 'duration'),
    G4: words('A kWh costs'),
    H4: choice('0.30', 'money'),
    A5: words('In order of'),
    B5: { ...choice('cost', 'text'), note: 'Below the options: cost, stops or watts.' },
    C5: words('showing'),
    D5: { ...choice('all', 'text'), note: 'all, or only those that are enough: enough.' },
    A6: heading('In a sentence'),
    B6: { typed: cheapest, quantity: 'text' },
    ...captionRow(head, captions),
    [`${letterOf('field')}${head}`]: { ...numberHeading(captions.field), note: fieldNote },
    ...Object.assign(
      {},
      ...Array.from({ length: count }, (_, index) =>
        optionRow(head + 1 + index, planned.options[index]),
      ),
    ),
    ...orderTable(),
    ...remarks('How it is counted', orderHead + count + 2, reckoning),
    ...remarks('Cautions', orderHead + count + 4 + reckoning.length, cautions),
  },
  figures: [
    {
      kind: 'cost',
      title: 'Light against cost',
      cells: {
        options: down('option'),
        light: down('off'),
        cost: down('cost'),
        fits: down('fits'),
      },
    },
  ],
});

/** Ways to light the interview at the sail loft. Invented. */
export const interview: PlannedComparison = {
  stop: 'f/4',
  speed: '800',
  time: '1/50 s',
  width: '1.5 m',
  days: '4',
  charged: '3',
  options: [
    {
      option: 'One panel, near',
      fixture: 'Soft panel',
      count: '1',
      gives: '900 lx',
      givesAt: '2 m',
      field: '100°',
      distance: '2 m',
      watts: '300 W',
      powerFactor: '0.95',
      rate: '45',
    },
    {
      option: 'Two panels, far',
      fixture: 'Soft panel',
      count: '2',
      gives: '900 lx',
      givesAt: '2 m',
      field: '100°',
      distance: '3.5 m',
      watts: '300 W',
      powerFactor: '0.95',
      rate: '45',
    },
    {
      option: 'Fresnel, diffused',
      fixture: 'Fresnel 650 at flood',
      count: '1',
      gives: '511 lx',
      givesAt: '3 m',
      field: '40°',
      distance: '3 m',
      loss: '1',
      watts: '650 W',
      powerFactor: '1',
      rate: '18',
    },
    {
      option: 'Fresnel, spot',
      fixture: 'Fresnel 650 at spot',
      count: '1',
      gives: '5333 lx',
      givesAt: '3 m',
      field: '14°',
      distance: '5 m',
      watts: '650 W',
      powerFactor: '1',
      rate: '18',
    },
    {
      option: 'Open face, bounced',
      fixture: 'Open face 800',
      count: '2',
      gives: '700 lx',
      givesAt: '3 m',
      field: '70°',
      distance: '4 m',
      loss: '1',
      watts: '800 W',
      powerFactor: '1',
      rate: '15',
      extras: '40',
    },
    {
      option: 'Four tubes',
      fixture: 'Tube 120',
      count: '4',
      gives: '90 lx',
      givesAt: '2 m',
      field: '120°',
      distance: '2 m',
      watts: '50 W',
      powerFactor: '0.6',
      rate: '30',
    },
  ],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [compareSheet(interview)] });
