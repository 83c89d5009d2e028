import { heading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { captionRow, captions, row, type ColumnName } from './columns.ts';
import { count, down, head } from './rows.ts';

/** The options once more below their table, sorted and filtered as the sheet’s head says. */
export const orderHead = head + count + 2;

type Listed = readonly [
  from: ColumnName,
  under: ColumnName,
  cell: Pick<PlannedCell, 'quantity' | 'decimals'>,
];

/** Each column of the list stands under one of the table’s, for the first eight are on the screen. */
const listed: readonly Listed[] = [
  ['option', 'option', { quantity: 'text' }],
  ['words', 'words', { quantity: 'text' }],
  ['reached', 'reached', { quantity: 'illuminance', decimals: 0 }],
  ['off', 'off', { quantity: 'stops', decimals: 1 }],
  ['covers', 'covers', { quantity: 'length', decimals: 1 }],
  ['cost', 'cost', { quantity: 'money' }],
  ['draws', 'fixture', { quantity: 'power', decimals: 0 }],
  ['amps', 'count', { quantity: 'current', decimals: 1 }],
  ['circuits', 'gives', { quantity: 'number' }],
];

export function orderTable(): Record<string, PlannedCell> {
  const names = Object.fromEntries(listed.map(([from, under]) => [under, captions[from]]));
  const rows = Array.from({ length: count }, (_, index) => {
    const at = `MATCH(SMALL(${down('key')},${index + 1}),${down('key')},0)`;
    return row(
      orderHead + 1 + index,
      Object.fromEntries(
        listed.map(([from, under, cell]) => [
          under,
          {
            typed: `=IFERROR(INDEX(${down(from)},${at}),"")`,
            ...cell,
            ...(from === 'draws' && { align: 'right' as const }),
          },
        ]),
      ),
    );
  });
  return Object.assign(
    captionRow(orderHead, { ...names, option: 'In order' }),
    { [`A${orderHead}`]: heading('In order') },
    ...rows,
  ) as Record<string, PlannedCell>;
}
