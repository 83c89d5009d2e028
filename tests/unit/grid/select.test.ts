import { expect, test } from 'vitest';
import { fillTarget, span } from '../../../src/grid/range.ts';
import {
  begin,
  beginAnother,
  extend,
  isSingle,
  lastRange,
  refit,
  selectCell,
} from '../../../src/grid/select.ts';

const at = (row: number, column: number) => ({ row, column });
const sheet = { rowCount: 20, columnCount: 8 };

test('extending keeps the anchor and the focus', () => {
  const selection = extend(selectCell(at(5, 5)), at(3, 7), sheet);
  expect(selection.focus).toEqual(at(5, 5));
  expect(selection.anchor).toEqual(at(5, 5));
  expect(selection.ranges).toEqual([{ kind: 'cells', from: at(3, 5), to: at(5, 7) }]);
});

test('a whole column reaches from the first to the last row', () => {
  const selection = extend(begin(at(4, 2), 'columns', sheet), at(4, 3), sheet);
  expect(lastRange(selection)).toEqual({ kind: 'columns', from: at(0, 2), to: at(19, 3) });
});

test('another range leaves the first alone', () => {
  const two = beginAnother(selectCell(at(1, 1)), at(6, 6), 'rows', sheet);
  expect(two.ranges).toHaveLength(2);
  expect(two.focus).toEqual(at(6, 6));
  const longer = extend(two, at(7, 6), sheet);
  expect(longer.ranges[0]).toEqual(selectCell(at(1, 1)).ranges[0]);
  expect(longer.ranges[1]).toEqual({ kind: 'rows', from: at(6, 0), to: at(7, 7) });
  expect(isSingle(two)).toBe(false);
  expect(isSingle(selectCell(at(0, 0)))).toBe(true);
});

test('a selection follows a sheet that shrinks, and a whole row one that grows', () => {
  const cells = refit(selectCell(at(19, 7)), { rowCount: 10, columnCount: 4 });
  expect(cells.focus).toEqual(at(9, 3));
  const row = refit(begin(at(2, 0), 'rows', sheet), { rowCount: 20, columnCount: 30 });
  expect(lastRange(row).to).toEqual(at(2, 29));
});

test('filling goes down or across, whichever is longer, and never inside', () => {
  const from = span(at(2, 2), at(3, 3));
  expect(fillTarget(from, at(3, 2))).toBe(null);
  expect(fillTarget(from, at(7, 4))).toEqual({ from: at(2, 2), to: at(7, 3) });
  expect(fillTarget(from, at(4, 7))).toEqual({ from: at(2, 2), to: at(3, 7) });
  expect(fillTarget(from, at(0, 2))).toEqual({ from: at(0, 2), to: at(3, 3) });
  expect(fillTarget(from, at(2, 0))).toEqual({ from: at(2, 0), to: at(3, 3) });
});
