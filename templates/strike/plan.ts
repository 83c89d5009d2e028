import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { columnsOf } from '../columns.ts';

const { letterOf, widths, captions, captionRow, row } = columnsOf({
  item: { caption: 'Item', width: 216 },
  words: { caption: 'In words', width: 248 },
  out: { caption: 'Out', width: 92, numbers: true },
  back: { caption: 'Back', width: 92, numbers: true },
  damaged: { caption: 'Damaged', width: 96, numbers: true },
  missing: { caption: 'Missing', width: 92, numbers: true },
  anew: { caption: 'Anew, each', width: 104, numbers: true },
  repair: { caption: 'Repair, each', width: 108, numbers: true },
  charged: { caption: 'Charged', width: 100, numbers: true },
  note: { caption: 'Note', width: 272 },
});
type ColumnName = Parameters<typeof letterOf>[0];

const head = 6;
const items = 22;
const [first, last] = [head + 1, head + items];
const stockHead = last + 2;
const stock = 6;
const down = (column: ColumnName): string =>
  `${letterOf(column)}${first}:${letterOf(column)}${last}`;

export interface PlannedReturn {
  readonly item: string;
  readonly out: string;
  readonly back?: string;
  readonly damaged?: string;
  readonly anew?: string;
  readonly repair?: string;
  readonly note?: string;
}

export interface PlannedStock {
  readonly item: string;
  /** What one wants to have, and what is left. */
  readonly keep: string;
  readonly left: string;
}

const s = (cell: string, one: string): string => `${cell}&" ${one}"`;

function itemRow(at: number, planned?: PlannedReturn): Record<string, PlannedCell> {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const once = (formula: string) => `=IF(ISBLANK(${is('item')}),"",${formula})`;
  const counted = (formula: string) => once(`IF(ISBLANK(${is('back')}),"",${formula})`);
  return row(at, {
    item: choice(planned?.item ?? '', 'text'),
    out: choice(planned?.out ?? '', 'number'),
    back: choice(planned?.back ?? '', 'number'),
    damaged: choice(planned?.damaged ?? '', 'number'),
    missing: { typed: counted(`${is('out')}-${is('back')}`), quantity: 'number' },
    anew: choice(planned?.anew ?? '', 'money'),
    repair: choice(planned?.repair ?? '', 'money'),
    charged: {
      typed: counted(
        `MAX(0,${is('missing')})*N(${is('anew')})+N(${is('damaged')})*N(${is('repair')})`,
      ),
      quantity: 'money',
    },
    note: choice(planned?.note ?? '', 'text'),
    words: {
      typed: once(
        `IF(ISBLANK(${is('back')}),"not counted yet",IF(${is('missing')}<0,${s(`-${is('missing')}`, 'more than went out')},` +
          `IF(AND(${is('missing')}=0,N(${is('damaged')})=0),"all back",` +
          `IF(${is('missing')}>0,${s(is('missing'), 'missing')},"all back")&IF(N(${is('damaged')})>0,", "&${s(is('damaged'), 'damaged')},""))))`,
      ),
      quantity: 'text',
    },
  });
}

function stockRow(at: number, planned?: PlannedStock): Record<string, PlannedCell> {
  const [keep, left, buy] = ['out', 'back', 'missing'].map(
    (column) => `${letterOf(column as ColumnName)}${at}`,
  );
  return row(at, {
    item: choice(planned?.item ?? '', 'text'),
    out: choice(planned?.keep ?? '', 'number'),
    back: choice(planned?.left ?? '', 'number'),
    missing: {
      typed: `=IF(OR(ISBLANK(A${at}),ISBLANK(${left})),"",MAX(0,${keep}-${left}))`,
      quantity: 'number',
      bold: true,
    },
    words: {
      typed: `=IF(OR(ISBLANK(A${at}),ISBLANK(${left})),"",IF(${buy}>0,"reorder "&${buy},"enough left"))`,
      quantity: 'text',
    },
  });
}

const rowsOf = <T>(
  from: number,
  count: number,
  planned: readonly T[],
  make: (at: number, one?: T) => Record<string, PlannedCell>,
): Record<string, PlannedCell> =>
  Object.assign(
    {},
    ...Array.from({ length: count }, (_, index) => make(from + index, planned[index])),
  );

const reckoning = [
  'Missing is what went out less what came back. Charged is what is missing at what it costs anew, and what is damaged at its repair.',
  'Photograph damage where it lies and put the photo on the cell of what came back: a claim is worth what it shows.',
];

const cautions = [
  'Switch off and let it cool before anything is struck; the last lamp out is the work light. What hangs comes down with two people and its safety bond last.',
  'Tag what is broken and keep it off the truck floor: a lead with a cut, a lamp that trips its device or a stand that slips goes to a competent person and never back into the case unmarked.',
  'Broken lamps: glass and what is in it need gloves, air and their own bin. Swollen batteries stay outside and are not carried in the van.',
];

export interface PlannedStrike {
  readonly givenBack: string;
  readonly takenIn: string;
  readonly day: string;
  readonly returns: readonly PlannedReturn[];
  readonly stock: readonly PlannedStock[];
}

/** What went out, what came back, and what has to be paid, mended and bought. */
export const strikeSheet = (planned: PlannedStrike): PlannedSheet => ({
  name: 'Out and back',
  title: 'Out and back',
  purpose: 'What went out, came back, broke or is missing, what is charged and what to reorder.',
  phase: 'strike',
  template: 'strike',
  frozenColumns: 1,
  widths,
  cells: {
    A1: words('Struck on'),
    B1: { ...choice(planned.day, 'dateTime'), align: 'left' },
    A2: words('Given back by'),
    B2: choice(planned.givenBack, 'text'),
    C2: words('Signed'),
    D2: choice('', 'text'),
    A3: words('Taken in by'),
    B3: choice(planned.takenIn, 'text'),
    C3: words('Signed'),
    D3: choice('', 'text'),
    A4: words('In all'),
    B4: {
      typed:
        `=IF(COUNTIF(${down('words')},"not counted yet")>0,COUNTIF(${down('words')},"not counted yet")&" not counted yet, ","")&` +
        `SUM(${down('missing')})&" missing, "&SUM(${down('damaged')})&" damaged"`,
      quantity: 'text',
    },
    H4: words('Charged'),
    I4: { typed: `=SUM(${down('charged')})`, quantity: 'money', bold: true },
    ...captionRow(head, captions),
    ...rowsOf(first, items, planned.returns, itemRow),
    ...captionRow(stockHead, {
      item: 'Used up',
      words: 'In words',
      out: 'To keep',
      back: 'Left',
      missing: 'Reorder',
    }),
    ...rowsOf(stockHead + 1, stock, planned.stock, stockRow),
    ...remarks('How it is counted', stockHead + stock + 2, reckoning),
    ...remarks('Cautions', stockHead + stock + 4 + reckoning.length, cautions),
  },
});

/** The end of the film at the harbour. Invented. */
export const harbourStrike: PlannedStrike = {
  day: '2026-09-26',
  givenBack: 'I. Brandt',
  takenIn: 'M. Okoro, Quay Hire',
  returns: [
    { item: 'Fresnel 650 at flood', out: '2', back: '2' },
    {
      item: 'Frame 120 × 120',
      out: '2',
      back: '2',
      damaged: '1',
      repair: '15',
      note: 'cloth torn on the slip',
    },
    { item: 'Small profile 19°', out: '1', back: '1' },
    { item: 'Tube 120', out: '5', back: '5' },
    {
      item: 'Open face 800',
      out: '2',
      back: '2',
      damaged: '1',
      repair: '22',
      note: 'lamp blown, glass cracked',
    },
    { item: 'Stand', out: '11', back: '10', anew: '64', note: 'last seen on the quay' },
    { item: 'Sandbag', out: '13', back: '13' },
    { item: 'Safety bond', out: '8', back: '6', anew: '7' },
    {
      item: 'Lead 20 m',
      out: '8',
      back: '8',
      damaged: '1',
      repair: '12',
      note: 'plug cracked, tagged',
    },
    { item: 'Board with device 30 mA', out: '3', back: '3' },
    { item: 'Generator 3 kVA', out: '1', note: 'fetched from the gate on Monday' },
  ],
  stock: [
    { item: 'Warming gel, roll', keep: '2', left: '1' },
    { item: 'Diffusion, roll', keep: '1', left: '1' },
    { item: 'Cloth tape, roll', keep: '6', left: '2' },
  ],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [strikeSheet(harbourStrike)] });
