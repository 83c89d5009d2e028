import { expect, test } from 'vitest';
import type { Selection } from '../../../src/grid/contract.ts';
import {
  blockEdge,
  cycle,
  lastUsed,
  stepFrom,
  steps,
  type Terrain,
} from '../../../src/grid/travel.ts';
import { selectBlock, selectCell } from '../../../src/grid/select.ts';

/** A sheet drawn in letters: a dot is a blank cell. */
function sheet(...lines: string[]): Terrain {
  return {
    rowCount: lines.length,
    columnCount: lines[0]?.length ?? 0,
    editText: (row, column) => (lines[row]?.[column] ?? '.').replace('.', ''),
    used: () => ({ rows: 2, columns: 3 }),
  };
}

const at = (row: number, column: number) => ({ row, column });
const line = sheet('ab..cd...');

test.each([
  { from: 0, to: 1, why: 'from inside a block to its end' },
  { from: 1, to: 4, why: 'from the end of a block to the next' },
  { from: 2, to: 4, why: 'from a blank to the next written cell' },
  { from: 5, to: 8, why: 'with nothing left to the edge of the sheet' },
  { from: 8, to: 8, why: 'from the edge nowhere' },
])('Ctrl and right goes $why', ({ from, to }) => {
  expect(blockEdge(at(0, from), steps.right, line)).toEqual(at(0, to));
});

test.each([
  { from: 8, to: 5 },
  { from: 5, to: 4 },
  { from: 4, to: 1 },
  { from: 0, to: 0 },
])('Ctrl and left goes from $from to $to', ({ from, to }) => {
  expect(blockEdge(at(0, from), steps.left, line)).toEqual(at(0, to));
});

test('a step never leaves the sheet', () => {
  expect(stepFrom(at(0, 0), steps.up, line)).toEqual(at(0, 0));
  expect(stepFrom(at(0, 8), steps.right, line, 20)).toEqual(at(0, 8));
});

test('the last used cell is the corner of what is written, and A1 on a blank sheet', () => {
  expect(lastUsed(sheet('abc', 'def', '...'))).toEqual(at(1, 2));
  expect(lastUsed({ ...sheet('...'), used: () => ({ rows: 0, columns: 0 }) })).toEqual(at(0, 0));
});

test('Tab goes through a block by rows, Enter by columns, and both come around', () => {
  const block = selectBlock({ from: at(1, 1), to: at(2, 2) });
  expect(cycle(block, 'right')).toEqual(at(1, 2));
  expect(cycle(block, 'down')).toEqual(at(2, 1));
  expect(cycle(block, 'left')).toEqual(at(2, 2));
  expect(cycle({ ...block, focus: at(2, 2) }, 'right')).toEqual(at(1, 1));
});

test('Tab goes from one range into the next and back', () => {
  const first = selectCell(at(0, 0)).ranges[0];
  const second = selectBlock({ from: at(4, 4), to: at(4, 5) }).ranges[0];
  const both: Selection = { ...selectCell(at(0, 0)), ranges: [first, second] };
  expect(cycle(both, 'right')).toEqual(at(4, 4));
  expect(cycle({ ...both, focus: at(4, 5) }, 'right')).toEqual(at(0, 0));
  expect(cycle(both, 'left')).toEqual(at(4, 5));
});
