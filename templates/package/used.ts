import { choice } from '../cells.ts';
import { captionRow, letterOf, row, type ColumnName } from './columns.ts';
import type { PlannedUse } from './planned.ts';
import { onceOf, rowsOf, used, type Cells } from './tables.ts';

/** Where what is used up has what. */
const use = {
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
