import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedSheet } from '../plan.ts';
import { letterOf, widths } from './columns.ts';
import { harbourPackage } from './harbour.ts';
import { dayTable } from './days.ts';
import { needTable } from './needs.ts';
import { orderTable } from './order.ts';
import { down, needs, order, totals, used } from './tables.ts';
import { useTable } from './used.ts';
import type { PlannedPackage } from './planned.ts';

const reckoning = [
  'A piece is ordered as often as it is out on the one day that needs most of it, not as often as it stands on the plans; spares come on top.',
  'A day without a word is a day off. Of the words preparation, shoot, travel and return the dearest of a day counts; a week is charged as so many days.',
  'What is used up adds up over all days and is bought: by area with both sides, by length with the width only.',
  'The command Collect the rigs puts in what hangs on the set plans and is not here, and counts it there; what it still has to collect is said above. Look through stands, spares, weight and rate of what is new.',
];

const cautions = [
  'A planning aid: what hangs overhead, its second fixing and what holds it are for a competent person; so are lifting gear and loads on stands.',
  'Order what safety takes as well: safety bonds, sandbags, cable covers, mats and ramps where the public goes, extinguishers, gloves.',
  'Never load a van over its plate; lamps, batteries and gas travel as their rules say.',
];

const total = (column: 'cost' | 'weight' | 'room') => `${letterOf(column)}${totals}`;

/** Items of the order of which nobody has said what they weigh: they are not in its weight. */
const unweighed = `(COUNTA(${down('item', order)})-COUNT(${down('each', order)}))`;

/** One order out of the rig of every place and day. */
export const packageSheet = (planned: PlannedPackage): PlannedSheet => ({
  name: 'Package',
  title: 'Package',
  purpose: 'What goes on the order for all places and days, what it weighs and costs.',
  phase: 'order',
  template: 'package',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('A week is charged as, days'),
    B1: choice(planned.charged, 'number'),
    C1: words('Insurance'),
    D1: choice(planned.insurance, 'share'),
    E1: words('Budget'),
    F1: choice(planned.budget, 'money'),
    G1: words('Van takes'),
    H1: choice('600 kg', 'weight'),
    I1: words('and, m³'),
    J1: choice('6', 'number'),
    A2: words('Preparation is charged at'),
    B2: choice('100 %', 'share'),
    C2: words('a day of shoot'),
    D2: choice('100 %', 'share'),
    E2: words('travel'),
    F2: choice('50 %', 'share'),
    G2: words('return'),
    H2: choice('0 %', 'share'),
    A3: words('Hire'),
    B3: { typed: `=${total('cost')}`, quantity: 'money' },
    C3: words('Used up'),
    D3: { typed: `=SUM(${down('cost', used)})`, quantity: 'money' },
    E3: words('Insured'),
    F3: { typed: '=B3*D1', quantity: 'money' },
    G3: words('In all'),
    H3: { typed: '=B3+D3+F3', quantity: 'money', bold: true },
    A4: words('Against the budget'),
    B4: {
      typed:
        '=IF(H3<=F1,TEXT(F1-H3,"0.00")&" left of the budget",TEXT(H3-F1,"0.00")&" over the budget")',
      quantity: 'text',
    },
    E4: words('On the van'),
    F4: {
      typed: `=IF(OR(${total('weight')}>H1,${total('room')}>J1),"too much for one load","goes in one load")&": "&ROUND(${total('weight')},0)&" kg, "&TEXT(${total('room')},"0.0")&" m³"&IF(${unweighed}>0,", "&${unweighed}&" without a weight","")`,
      quantity: 'text',
    },
    A5: words('Counted'),
    B5: {
      typed: `=IF(COUNTIF(${down('spares', needs)},"no such place")>0,COUNTIF(${down('spares', needs)},"no such place")&" of what is needed at no place of the days",IF(COUNTIF(${down('spares', needs)},"*ordered*")=0,"everything needed is on the order once",COUNTIF(${down('spares', needs)},"*ordered*")&" of what is needed not on the order, or twice"))`,
      quantity: 'text',
    },
    A6: words('Of the rigs'),
    B6: { typed: planned.ofTheRigs ?? '', quantity: 'text' },
    ...dayTable(planned.firstDay, planned.places),
    ...needTable(planned.needs),
    ...orderTable(planned.order),
    ...useTable(planned.used),
    ...remarks('How it is counted', used.last + 2, reckoning),
    ...remarks('Cautions', used.last + 4 + reckoning.length, cautions),
  },
});

/** Where the order stands, for the sheets that go on from it. */
export const orderAt = (index: number, column: 'item' | 'order'): string =>
  `${letterOf(column)}${order.first + index}`;

export const build = () => buildBook({ title: 'Untitled', sheets: [packageSheet(harbourPackage)] });
