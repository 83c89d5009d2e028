import { choice, heading, numberHeading, words } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { letterOf, row, type ColumnName } from './columns.ts';

type Cells = Record<string, PlannedCell>;

/** What is hired, for where and for how long, as it is typed. */
export interface PlannedHire {
  readonly item: string;
  readonly place: string;
  readonly count: string;
  readonly out: string;
  readonly back: string;
  readonly rate?: string;
  readonly week?: string;
  readonly discount?: string;
  /** The package that pays for it. */
  readonly package?: string;
  /** Of one, where it draws any. */
  readonly watts?: string;
  readonly powerFactor?: string;
}

export const volts = '$B$2';
export const charged = '$B$1';
export const insurance = '$D$1';
export const budget = '$F$1';

export const head = 7;
export const items = 14;
const [first, last] = [head + 1, head + items];
export const placesHead = last + 2;

export const down = (column: ColumnName): string =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

export function hireRow(at: number, planned?: PlannedHire): Cells {
  const is = (column: ColumnName) => `${letterOf(column)}${at}`;
  const once = (formula: string) => `=IF(ISBLANK(${is('item')}),"",${formula})`;
  const left = `(1-${is('discount')})`;
  const byDays = `HIRE(${is('rate')}*${left},${is('days')},${charged})`;
  /** Whole weeks at the week’s rate, and the days left at no more than that. */
  const byWeeks = `INT(${is('days')}/7)*${is('week')}*${left}+MIN(MOD(${is('days')},7)*${is('rate')},${is('week')})*${left}`;
  return row(at, {
    item: choice(planned?.item ?? '', 'text'),
    place: choice(planned?.place ?? '', 'text'),
    count: choice(planned?.count ?? '', 'number'),
    out: choice(planned?.out ?? '', 'dateTime'),
    back: choice(planned?.back ?? '', 'dateTime'),
    days: {
      typed: once(`DAYS(${is('back')},${is('out')})+1`),
      quantity: 'number',
    },
    rate: choice(planned?.rate ?? '', 'money'),
    week: choice(planned?.week ?? '', 'money'),
    discount: choice(planned?.discount ?? '0 %', 'share'),
    package: choice(planned?.package ?? '', 'text'),
    cost: {
      typed: once(
        `IF(NOT(ISBLANK(${is('package')})),0,${is('count')}*IF(ISBLANK(${is('week')}),${byDays},${byWeeks}))`,
      ),
      quantity: 'money',
    },
    daily: { typed: once(`${is('cost')}/${is('days')}`), quantity: 'money' },
    watts: choice(planned?.watts ?? '', 'power'),
    powerFactor: choice(planned?.powerFactor ?? '', 'number'),
    draws: {
      typed: once(`IF(ISBLANK(${is('watts')}),0,${is('count')}*${is('watts')})`),
      quantity: 'power',
      decimals: 0,
    },
    amps: {
      typed: once(
        `IF(ISBLANK(${is('watts')}),0,${is('count')}*AMPS(${is('watts')},${volts},${is('powerFactor')}))`,
      ),
      quantity: 'current',
      decimals: 1,
    },
  });
}

/** What each day costs at each place: a row a day, a column a place, both of them typed. */
export function dayTable(days: readonly string[], places: readonly string[]): Cells {
  const columns = ['B', 'C', 'D'] as const;
  const cells: Cells = {
    [`A${placesHead}`]: heading('By day and place'),
    [`E${placesHead}`]: numberHeading('In all'),
    [`F${placesHead}`]: numberHeading('Pieces out'),
    [`A${placesHead + days.length + 1}`]: heading('By place'),
  };
  for (const [index, column] of columns.entries()) {
    const place = `${column}$${placesHead}`;
    const [top, bottom] = [placesHead + 1, placesHead + days.length];
    cells[`${column}${placesHead}`] = {
      ...choice(places[index] ?? '', 'text'),
      bold: true,
      align: 'right',
    };
    for (let at = top; at <= bottom; at += 1)
      cells[`${column}${at}`] = {
        typed: `=SUMIFS(${down('daily')},${down('place')},${place},${isOut(at)})`,
        quantity: 'money',
      };
    cells[`${column}${bottom + 1}`] = {
      typed: `=SUMIFS(${down('cost')},${down('place')},${place})`,
      quantity: 'money',
      bold: true,
    };
  }
  for (const [index, day] of days.entries()) {
    const at = placesHead + 1 + index;
    cells[`A${at}`] = choice(day, 'dateTime');
    cells[`E${at}`] = {
      typed: `=SUMIFS(${down('daily')},${isOut(at)})`,
      quantity: 'money',
    };
    cells[`F${at}`] = { typed: `=SUMIFS(${down('count')},${isOut(at)})`, quantity: 'number' };
  }
  cells[`E${placesHead + days.length + 1}`] = {
    typed: `=SUM(${down('cost')})`,
    quantity: 'money',
    bold: true,
  };
  cells[`A${placesHead + days.length + 2}`] = words('Not on any day or place above');
  cells[`E${placesHead + days.length + 2}`] = {
    typed: `=ROUND(E${placesHead + days.length + 1}-SUM(B${placesHead + 1}:D${placesHead + days.length}),2)`,
    quantity: 'money',
  };
  return cells;
}

/** Criteria that a row is out on the day in column A. */
export const isOut = (at: number): string =>
  `${down('out')},"<="&$A${at},${down('back')},">="&$A${at}`;
