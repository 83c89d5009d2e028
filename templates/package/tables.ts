import type { PlannedCell } from '../plan.ts';
import { dayNames, letterOf, type ColumnName } from './columns.ts';

export type Cells = Record<string, PlannedCell>;

const table = (head: number, rows: number) => ({ head, first: head + 1, last: head + rows });
export const days = table(7, 4);
/** The share of the rate that each day is charged at, under the places. */
export const chargedRow = days.last + 1;
export const needs = table(chargedRow + 2, 20);
export const order = table(needs.last + 2, 20);
export const totals = order.last + 1;
export const used = table(totals + 3, 6);

type Rows = ReturnType<typeof table>;
export const down = (column: ColumnName, { first, last }: Rows): string =>
  `$${letterOf(column)}$${first}:$${letterOf(column)}$${last}`;

export const onceOf = (at: number) => (formula: string) => `=IF(ISBLANK($A${at}),"",${formula})`;
export const rowsOf = <T>(
  { first, head, last }: Rows,
  planned: readonly T[],
  make: (at: number, one?: T) => Cells,
): Cells =>
  Object.assign(
    {},
    ...Array.from({ length: last - head }, (_, index) => make(first + index, planned[index])),
  );

export const perDay = (make: (column: string, index: number) => PlannedCell) =>
  Object.fromEntries(dayNames.map((name, index) => [name, make(letterOf(name), index)])) as Record<
    (typeof dayNames)[number],
    PlannedCell
  >;
