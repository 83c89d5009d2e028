import type { PlannedCell } from '../plan.ts';
import { letterOf, lightNames } from './columns.ts';

export type Cells = Record<string, PlannedCell>;

const count = 10;
const table = (head: number) => ({ head, first: head + 1, last: head + count });
export const list = table(5);
export const order = table(list.last + 2);

export const rowsOf = (
  { head, first, last }: typeof list,
  make: (at: number, index: number) => Cells,
): Cells =>
  Object.assign(
    {},
    ...Array.from({ length: last - head }, (_, index) => make(first + index, index)),
  );

export const perLight = (make: (column: string, index: number) => PlannedCell) =>
  Object.fromEntries(
    lightNames.map((name, index) => [name, make(letterOf(name), index)]),
  ) as Record<(typeof lightNames)[number], PlannedCell>;
