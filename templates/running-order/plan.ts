import { buildBook } from '../build.ts';
import { choice, remarks, words } from '../cells.ts';
import type { PlannedCell, PlannedSheet } from '../plan.ts';
import { captionRow, letterOf, lightNames, row, widths, type ColumnName } from './columns.ts';

type Cells = Record<string, PlannedCell>;

const count = 10;
const listHead = 5;
const [listFirst, listLast] = [listHead + 1, listHead + count];
const orderHead = listLast + 2;
const [first, last] = [orderHead + 1, orderHead + count];

export interface PlannedSetUp {
  readonly setUp: string;
  readonly place: string;
  /** The how-manieth it is shot as. */
  readonly order: string;
  /** Where each light stands; nothing where it is not used. */
  readonly lights: readonly string[];
  readonly takes: string;
}

const perLight = (make: (column: string, index: number) => PlannedCell) =>
  Object.fromEntries(
    lightNames.map((name, index) => [name, make(letterOf(name), index)]),
  ) as Record<(typeof lightNames)[number], PlannedCell>;

const [left, right] = [letterOf('l1'), letterOf('l8')];
const lightsOf = (at: number): string => `$${left}${at}:$${right}${at}`;

interface Changes {
  readonly rigged: string;
  readonly struck: string;
  readonly moved: string;
}

/** What changes from the row above to this one; at another place everything is struck and rigged anew. */
function changes(at: number, isFirst: boolean): Changes {
  const [now, before] = [lightsOf(at), lightsOf(at - 1)];
  const some = (lights: string) => `(${lights}<>"")`;
  if (isFirst) return { rigged: `SUMPRODUCT(${some(now)}*1)`, struck: '0', moved: '0' };
  const place = letterOf('place');
  const same = `(${place}${at}=${place}${at - 1})`;
  const both = `${some(now)}*${some(before)}`;
  return {
    rigged: `SUMPRODUCT(${some(now)}*(1-${some(before)}*${same}))`,
    struck: `SUMPRODUCT(${some(before)}*(1-${some(now)}*${same}))`,
    moved: `SUMPRODUCT(${both}*(${now}<>${before})*${same})`,
  };
}

function listRow(at: number, planned?: PlannedSetUp): Cells {
  const { rigged, struck, moved } = changes(at, at === listFirst);
  const once = (formula: string) => `=IF(ISBLANK($A${at}),"",${formula})`;
  return row(at, {
    setUp: choice(planned?.setUp ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    order: choice(planned?.order ?? '', 'number'),
    takes: choice(planned?.takes ?? '', 'duration'),
    ...perLight((_, index) => choice(planned?.lights[index] ?? '', 'text')),
    rigged: { typed: once(rigged), quantity: 'number' },
    struck: { typed: once(struck), quantity: 'number' },
    moved: { typed: once(moved), quantity: 'number' },
  });
}

/** The row of the list that is shot as the n-th, looked up. */
function orderRow(at: number): Cells {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const number = at - orderHead;
  const down = (column: ColumnName | string) => `$${column}$${listFirst}:$${column}$${listLast}`;
  const found = `MATCH(${number},${down(letterOf('order'))},0)`;
  const fetched = (column: string) => `=IFERROR(INDEX(${down(column)},${found})&"","")`;
  const once = (formula: string) =>
    `=IF(COUNTIF(${down(letterOf('order'))},${number})=0,"",${formula})`;
  const { rigged, struck, moved } = changes(at, at === first);
  const place = letterOf('place');
  const travels = at === first ? '0' : `IF(${is('place')}=${place}${at - 1},0,$H$2)`;
  const moves = `(${is('rigged')}+${is('struck')}+${is('moved')})`;
  const again = `MATCH(${is('rig')},$${letterOf('rig')}$${first}:$${letterOf('rig')}$${at - 1},0)`;
  const shared = `INDEX($A$${first}:$A$${at - 1},${again})`;
  const said = `IF(${moves}=0,"no moves",${moves}&IF(${moves}=1," move"," moves"))`;
  return row(at, {
    setUp: { typed: fetched('A'), quantity: 'text' },
    place: { typed: fetched(place), quantity: 'text' },
    order: { typed: once(String(number)), quantity: 'number' },
    takes: {
      typed: once(`INDEX(${down(letterOf('takes'))},${found})`),
      quantity: 'duration',
      decimals: 1,
    },
    ...perLight((column) => ({ typed: fetched(column), quantity: 'text' })),
    rigged: { typed: once(rigged), quantity: 'number' },
    struck: { typed: once(struck), quantity: 'number' },
    moved: { typed: once(moved), quantity: 'number' },
    hours: {
      typed: once(`${is('rigged')}*$B$2+${is('struck')}*$D$2+${is('moved')}*$F$2+${travels}`),
      quantity: 'duration',
      decimals: 1,
    },
    from: {
      typed: once(at === first ? '$B$1' : `${letterOf('until')}${at - 1}`),
      quantity: 'dateTime',
    },
    until: {
      typed: once(`${is('from')}+(${is('hours')}+${is('takes')})/24`),
      quantity: 'dateTime',
    },
    words: {
      typed: once(at === first ? said : `${said}&IFERROR(", the rig of "&${shared},"")`),
      quantity: 'text',
    },
    rig: {
      typed: once([`${is('place')}`, ...lightNames.map((name) => is(name))].join('&"/"&')),
      quantity: 'text',
    },
  });
}

const reckoning = [
  'Under each light stands where it is in that set-up, in your own words; the same word is the same place, no word is no light.',
  'A change is counted in moves: a light that is rigged, struck or stands elsewhere is one. At another place everything is struck and rigged anew.',
  'Shot as is yours: number the set-ups and see what the order costs. Set-ups that share a rig are best shot one after the other.',
];

const cautions = [
  'Hours are yours and not a promise: rigging overhead, in wind, on water or at night takes its own time, and nobody hurries on a ladder.',
  'Breaks and rest are for the working rules where you are: put them in as set-ups without lights.',
];

const sum = (column: ColumnName, from: number, to: number) =>
  `SUM(${letterOf(column)}${from}:${letterOf(column)}${to})`;
const movesIn = (from: number, to: number) =>
  `(${(['rigged', 'struck', 'moved'] as const).map((column) => sum(column, from, to)).join('+')})`;

export interface PlannedRunning {
  readonly begins: string;
  readonly lights: readonly string[];
  readonly setUps: readonly PlannedSetUp[];
}

const headOf = (lights: readonly string[]) =>
  perLight((_, index) => ({ ...choice(lights[index] ?? '', 'text'), bold: true }));

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
      typed: `=${movesIn(first, last)}&" moves, "&TEXT(${sum('hours', first, last)},"0.0")&" h to rig, strike and travel; as listed "&${movesIn(listFirst, listLast)}&" moves"`,
      quantity: 'text',
    },
    ...captionRow(listHead, {
      setUp: 'Set-up',
      place: 'Place',
      order: 'Shot as',
      takes: 'Shooting takes',
      rigged: 'To rig',
      struck: 'To strike',
      moved: 'To move',
    }),
    ...row(listHead, headOf(planned.lights)),
    ...Object.assign(
      {},
      ...Array.from({ length: count }, (_, index) =>
        listRow(listFirst + index, planned.setUps[index]),
      ),
    ),
    ...captionRow(orderHead, {
      setUp: 'In order',
      place: 'Place',
      order: 'Shot as',
      takes: 'Shooting takes',
      rigged: 'To rig',
      struck: 'To strike',
      moved: 'To move',
      hours: 'Takes',
      from: 'Begins',
      until: 'Shot by',
      words: 'In words',
      rig: 'Rig',
    }),
    ...row(
      orderHead,
      perLight((column) => ({ typed: `=${column}${listHead}&""`, quantity: 'text', bold: true })),
    ),
    ...Object.assign({}, ...Array.from({ length: count }, (_, index) => orderRow(first + index))),
    ...remarks('How it is counted', last + 2, reckoning),
    ...remarks('Cautions', last + 4 + reckoning.length, cautions),
  },
});

/** The scenes of the film at the harbour. Invented. */
export const harbourRunning: PlannedRunning = {
  begins: '2026-09-21 08:00',
  lights: ['Key', 'Fill', 'Back', 'Canvas left', 'Canvas right', 'Bench'],
  setUps: [
    {
      setUp: '12A interview, wide',
      place: 'Sail loft',
      order: '1',
      takes: '1.5 h',
      lights: ['window', 'chair', 'beam', 'left', 'right'],
    },
    {
      setUp: '14 rope work',
      place: 'Sail loft',
      order: '4',
      takes: '2 h',
      lights: ['bench', '', 'beam', '', '', 'bench'],
    },
    {
      setUp: '12B interview, close',
      place: 'Sail loft',
      order: '2',
      takes: '1 h',
      lights: ['window', 'close', 'beam', 'left', 'right'],
    },
    {
      setUp: '21 launch',
      place: 'Boat shed',
      order: '5',
      takes: '3 h',
      lights: ['slip', '', 'door'],
    },
    {
      setUp: '12C pick-ups',
      place: 'Sail loft',
      order: '3',
      takes: '0.5 h',
      lights: ['window', 'close', 'beam', 'left', 'right'],
    },
    {
      setUp: '30 ice',
      place: 'Ice house',
      order: '6',
      takes: '2 h',
      lights: ['', '', '', 'vault', 'steps'],
    },
  ],
};

export const build = () => buildBook({ title: 'Untitled', sheets: [runningSheet(harbourRunning)] });
