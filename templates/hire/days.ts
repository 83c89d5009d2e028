import { choice, heading, numberHeading } from '../cells.ts';
import type { PlannedCell } from '../plan.ts';
import { down, isOut, placesHead } from './rows.ts';

type Cells = Record<string, PlannedCell>;

/** What a place is fed from, and what that may give for hours. */
export interface PlannedSupply {
  readonly supply: string;
  readonly carries: string;
}

const columns = ['B', 'C', 'D'] as const;

/** A row for each place of the table above: what feeds it. */
export function supplyTable(head: number, planned: readonly PlannedSupply[]): Cells {
  const cells: Cells = {
    [`A${head}`]: heading('Fed from'),
    [`B${head}`]: heading('Supply'),
    [`C${head}`]: numberHeading('May give'),
    [`D${head}`]: numberHeading('Most on a day'),
    [`E${head}`]: numberHeading('Free then'),
  };
  for (const [index, column] of columns.entries()) {
    const at = head + 1 + index;
    const { supply = '', carries = '' } = planned[index] ?? {};
    cells[`A${at}`] = { typed: `=${column}$${placesHead}`, quantity: 'text' };
    cells[`B${at}`] = choice(supply, 'text');
    cells[`C${at}`] = choice(carries, 'current');
    const plan = planHead(head);
    const [first, last] = [plan + 1, plan + 3 * dayCount];
    cells[`D${at}`] = {
      typed: `=MAXIFS($E$${first}:$E$${last},$B$${first}:$B$${last},A${at})`,
      quantity: 'current',
      decimals: 1,
    };
    cells[`E${at}`] = { typed: `=C${at}-D${at}`, quantity: 'current', decimals: 1 };
  }
  return cells;
}

export const dayCount = 7;
export const planHead = (supplyHead: number): number => supplyHead + 3 + 2;

/** Day by day and place by place, all of it from what is hired: what is out, what it draws and costs. */
export function dayPlan(supplyHead: number): Cells {
  const head = planHead(supplyHead);
  const cells: Cells = {
    [`A${head}`]: heading('Day by day'),
    [`B${head}`]: heading('Place'),
    [`C${head}`]: numberHeading('Pieces out'),
    [`D${head}`]: numberHeading('Draw'),
    [`E${head}`]: numberHeading('Current'),
    [`F${head}`]: numberHeading('Free'),
    [`G${head}`]: numberHeading('Hire'),
    [`H${head}`]: heading('In words'),
  };
  for (let index = 0; index < 3 * dayCount; index += 1)
    Object.assign(cells, planRow(head + 1 + index, supplyHead, index));
  return cells;
}

function planRow(at: number, supplyHead: number, index: number): Cells {
  const place = index % columns.length;
  const day = placesHead + 1 + Math.floor(index / columns.length);
  const supply = supplyHead + 1 + place;
  const there = `${down('place')},$B${at},${isOut(at)}`;
  const free = `ROUND(ABS(F${at}),1)&" A`;
  return {
    [`A${at}`]: { typed: `=$A$${day}`, quantity: 'dateTime' },
    [`B${at}`]: { typed: `=${columns[place] ?? ''}$${placesHead}`, quantity: 'text' },
    [`C${at}`]: { typed: `=SUMIFS(${down('count')},${there})`, quantity: 'number' },
    [`D${at}`]: { typed: `=SUMIFS(${down('draws')},${there})`, quantity: 'power', decimals: 0 },
    [`E${at}`]: { typed: `=SUMIFS(${down('amps')},${there})`, quantity: 'current', decimals: 1 },
    [`F${at}`]: { typed: `=$C$${supply}-E${at}`, quantity: 'current', decimals: 1 },
    [`G${at}`]: { typed: `=SUMIFS(${down('daily')},${there})`, quantity: 'money' },
    [`H${at}`]: {
      typed:
        `=IF(C${at}=0,"nothing there",IF(E${at}=0,"needs no mains",` +
        `IF(F${at}<0,${free} too much for the "&$B$${supply},${free} free on the "&$B$${supply})))`,
      quantity: 'text',
    },
  };
}
