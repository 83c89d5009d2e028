import { choice } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, captions, dayNames, letterOf, row, type ColumnName } from './columns.ts';

type Cells = Record<string, PlannedCell>;

const table = (head: number, rows: number) => ({ head, first: head + 1, last: head + rows });
export const days = table(7, 4);
/** The share of the rate that each day is charged at, under the places. */
export const chargedRow = days.last + 1;
export const needs = table(chargedRow + 2, 20);
export const order = table(needs.last + 2, 20);
export const totals = order.last + 1;
export const used = table(totals + 3, 6);

export const kinds = ['preparation', 'shoot', 'travel', 'return'] as const;
type Kind = (typeof kinds)[number];
/** What a day of each kind is charged at. */
export const shareOf: Readonly<Record<Kind, string>> = {
  preparation: '$B$2',
  shoot: '$D$2',
  travel: '$F$2',
  return: '$H$2',
};
export const weekAs = '$B$1';

type Rows = ReturnType<typeof table>;
export const down = (column: ColumnName, { first, last }: Rows): string =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

const onceOf = (at: number) => (formula: string) => `=IF(ISBLANK($A${at}),"",${formula})`;
const rowsOf = <T>(
  { first, head, last }: Rows,
  planned: readonly T[],
  make: (at: number, one?: T) => Cells,
): Cells =>
  Object.assign(
    {},
    ...Array.from({ length: last - head }, (_, index) => make(first + index, planned[index])),
  );

export interface PlannedPlace {
  readonly place: string;
  /** A word a day: preparation, shoot, travel, return, or nothing. */
  readonly days: readonly string[];
}

const perDay = (make: (column: string, index: number) => PlannedCell) =>
  Object.fromEntries(dayNames.map((name, index) => [name, make(letterOf(name), index)])) as Record<
    (typeof dayNames)[number],
    PlannedCell
  >;

/** What is done where on which day; the first day is typed, the others follow it. */
export function dayTable(first: string, places: readonly PlannedPlace[]): Cells {
  const dates = perDay((_, index) => {
    const before = dayNames[index - 1];
    return before === undefined
      ? { ...choice(first, 'dateTime'), bold: true }
      : { typed: `=${letterOf(before)}${days.head}+1`, quantity: 'dateTime', bold: true };
  });
  return {
    ...captionRow(days.head, { item: 'Days' }),
    ...row(days.head, dates),
    ...rowsOf(days, places, (at, planned) =>
      row(at, {
        item: choice(planned?.place ?? '', 'text'),
        ...perDay((_, index) => ({
          ...choice(planned?.days[index] ?? '', 'text'),
          align: 'right',
        })),
      }),
    ),
    ...row(chargedRow, {
      item: { typed: 'Charged at' },
      ...perDay((column) => {
        const there = `${column}${days.first}:${column}${days.last}`;
        const each = kinds.map((kind) => `IF(COUNTIF(${there},"${kind}")>0,${shareOf[kind]},0)`);
        return { typed: `=MAX(${each.join(',')})`, quantity: 'share', decimals: 0 };
      }),
    }),
  };
}

export interface PlannedNeed {
  readonly item: string;
  readonly place: string;
  /** Where the count comes from, in words. */
  readonly from: string;
  readonly count: string;
}

function needRow(at: number, planned?: PlannedNeed): Cells {
  const once = onceOf(at);
  const [first, last] = [days.first, days.last];
  const place = `MATCH($${letterOf('place')}${at},$A$${first}:$A$${last},0)`;
  return row(at, {
    item: choice(planned?.item ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    kind: choice(planned?.from ?? '', 'text'),
    count: choice(planned?.count ?? '', 'number'),
    ...perDay((column) => ({
      typed: once(
        `IF(INDEX(${column}$${first}:${column}$${last},${place})="",0,$${letterOf('count')}${at})`,
      ),
      quantity: 'number',
    })),
    spares: {
      typed: once(
        `IF(COUNTIF(${down('item', order)},$A${at})=0,"not ordered",IF(COUNTIF(${down('item', order)},$A${at})>1,"ordered twice",""))`,
      ),
      quantity: 'text',
    },
  });
}

export const needTable = (planned: readonly PlannedNeed[]): Cells => ({
  ...captionRow(needs.head, {
    item: 'Needed',
    place: 'Place',
    kind: 'Counted on',
    count: 'Count',
    spares: 'Remark',
  }),
  ...rowsOf(needs, planned, needRow),
});

export interface PlannedOrder {
  readonly item: string;
  readonly supplier: string;
  readonly kind: string;
  readonly spares?: string;
  readonly each: string;
  readonly volume: string;
  readonly rate: string;
}

function orderRow(at: number, planned?: PlannedOrder): Cells {
  const once = onceOf(at);
  const is = (column: ColumnName) => `$${letterOf(column)}${at}`;
  const [from, to] = [letterOf('d1'), letterOf('d8')];
  const out = `${from}${at}:${to}${at}`;
  return row(at, {
    item: choice(planned?.item ?? '', 'text'),
    place: choice(planned?.supplier ?? '', 'text'),
    kind: choice(planned?.kind ?? '', 'text'),
    ...perDay((column) => ({
      typed: once(
        `SUMIFS(${column}$${needs.first}:${column}$${needs.last},${down('item', needs)},$A${at})`,
      ),
      quantity: 'number',
    })),
    count: { typed: once(`MAX(${out})`), quantity: 'number' },
    spares: choice(planned?.spares ?? '', 'number'),
    order: { typed: once(`${is('count')}+N(${is('spares')})`), quantity: 'number', bold: true },
    each: choice(planned?.each ?? '', 'weight'),
    volume: choice(planned?.volume ?? '', 'number'),
    weight: { typed: once(`${is('order')}*${is('each')}`), quantity: 'weight', decimals: 0 },
    room: { typed: once(`${is('order')}*${is('volume')}`), quantity: 'number', decimals: 2 },
    rate: choice(planned?.rate ?? '', 'money'),
    days: {
      typed: once(`SUMPRODUCT((${out}>0)*$${from}$${chargedRow}:$${to}$${chargedRow})`),
      quantity: 'number',
    },
    cost: {
      typed: once(`${is('order')}*HIRE(${is('rate')},${is('days')},${weekAs})`),
      quantity: 'money',
    },
  });
}

export const orderTable = (planned: readonly PlannedOrder[]): Cells => ({
  ...captionRow(order.head, captions),
  ...rowsOf(order, planned, orderRow),
  ...row(totals, {
    item: { typed: 'Pieces out' },
    ...perDay((column) => ({
      typed: `=SUM(${column}${order.first}:${column}${order.last})`,
      quantity: 'number',
    })),
    order: { typed: `=SUM(${down('order', order)})`, quantity: 'number', bold: true },
    weight: {
      typed: `=SUM(${down('weight', order)})`,
      quantity: 'weight',
      bold: true,
      decimals: 0,
    },
    room: { typed: `=SUM(${down('room', order)})`, quantity: 'number', bold: true, decimals: 2 },
    cost: { typed: `=SUM(${down('cost', order)})`, quantity: 'money', bold: true },
  }),
  ...row(totals + 1, {
    item: { typed: 'Weight out' },
    ...perDay((column) => ({
      typed: `=SUMPRODUCT(${column}${order.first}:${column}${order.last},${down('each', order)})`,
      quantity: 'weight',
      decimals: 0,
    })),
  }),
});

export interface PlannedUse {
  readonly item: string;
  readonly supplier: string;
  readonly from: string;
  readonly count: string;
  readonly width: string;
  /** Left empty for what goes by length, such as tape. */
  readonly height?: string;
  readonly waste: string;
  /** What one roll, sheet or box of it holds: an area, or a length. */
  readonly holds: string;
  readonly price: string;
}

/** Where what is used up has what. */
export const use = {
  width: 'd1',
  height: 'd2',
  area: 'd3',
  run: 'd4',
  waste: 'd5',
  holdsArea: 'd6',
  holdsRun: 'd7',
  buy: 'order',
  price: 'rate',
} as const satisfies Record<string, ColumnName>;

function useRow(at: number, planned?: PlannedUse): Cells {
  const once = onceOf(at);
  const is = (what: keyof typeof use) => `${letterOf(use[what])}${at}`;
  return row(at, {
    item: choice(planned?.item ?? '', 'text'),
    place: choice(planned?.supplier ?? '', 'text'),
    kind: choice(planned?.from ?? '', 'text'),
    count: choice(planned?.count ?? '', 'number'),
    [use.width]: choice(planned?.width ?? '', 'length'),
    [use.height]: choice(planned?.height ?? '', 'length'),
    [use.area]: {
      typed: once(
        `IF(ISBLANK(${is('height')}),"",$${letterOf('count')}${at}*${is('width')}*${is('height')})`,
      ),
      quantity: 'area',
      decimals: 2,
    },
    [use.run]: {
      typed: once(`IF(ISBLANK(${is('height')}),$${letterOf('count')}${at}*${is('width')},"")`),
      quantity: 'length',
      decimals: 1,
    },
    [use.waste]: choice(planned?.waste ?? '', 'share'),
    [use.holdsArea]: choice(planned?.height ? planned.holds : '', 'area'),
    [use.holdsRun]: choice(planned?.height ? '' : (planned?.holds ?? ''), 'length'),
    [use.buy]: {
      typed: once(
        `IF(ISBLANK(${is('height')}),ROUNDUP(${is('run')}*(1+${is('waste')})/${is('holdsRun')},0),ROUNDUP(${is('area')}*(1+${is('waste')})/${is('holdsArea')},0))`,
      ),
      quantity: 'number',
      bold: true,
    },
    [use.price]: choice(planned?.price ?? '', 'money'),
    cost: { typed: once(`${is('buy')}*${is('price')}`), quantity: 'money' },
  });
}

export const useTable = (planned: readonly PlannedUse[]): Cells => ({
  ...captionRow(used.head, {
    item: 'Used up',
    place: 'Who supplies it',
    kind: 'Counted on',
    count: 'Pieces',
    [use.width]: 'Width',
    [use.height]: 'Height',
    [use.area]: 'Area',
    [use.run]: 'Length',
    [use.waste]: 'Waste',
    [use.holdsArea]: 'One covers',
    [use.holdsRun]: 'One is long',
    [use.buy]: 'To buy',
    [use.price]: 'Each',
    cost: 'Cost',
  }),
  ...rowsOf(used, planned, useRow),
});
