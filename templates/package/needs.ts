import { choice } from '../cells.ts';
import { captionRow, letterOf, row } from './columns.ts';
import type { PlannedNeed } from './planned.ts';
import { days, down, needs, onceOf, order, perDay, rowsOf, type Cells } from './tables.ts';

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
        `IFERROR(IF(INDEX(${column}$${first}:${column}$${last},${place})="",0,$${letterOf('count')}${at}),0)`,
      ),
      quantity: 'number',
    })),
    spares: {
      typed: once(
        `IF(ISNA(${place}),"no such place",IF(COUNTIF(${down('item', order)},$A${at})=0,"not ordered",IF(COUNTIF(${down('item', order)},$A${at})>1,"ordered twice","")))`,
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
