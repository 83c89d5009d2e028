import { choice } from '../cells.ts';
import { captionRow, dayNames, letterOf, row } from './columns.ts';
import type { PlannedPlace } from './planned.ts';
import { chargedRow, days, perDay, rowsOf, type Cells } from './tables.ts';

const kinds = ['preparation', 'shoot', 'travel', 'return'] as const;
type Kind = (typeof kinds)[number];
/** What a day of each kind is charged at. */
const shareOf: Readonly<Record<Kind, string>> = {
  preparation: '$B$2',
  shoot: '$D$2',
  travel: '$F$2',
  return: '$H$2',
};

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
