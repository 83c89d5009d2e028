import { choice } from '../cells.ts';
import { captionRow, captions, letterOf, row, type ColumnName } from './columns.ts';
import type { PlannedOrder } from './planned.ts';
import {
  chargedRow,
  down,
  needs,
  onceOf,
  order,
  perDay,
  rowsOf,
  totals,
  type Cells,
} from './tables.ts';

/** What a week is charged as, in days. */
const weekAs = '$B$1';

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
