import { expect, test } from 'vitest';
import type { GridModel } from '../../../src/grid/contract.ts';
import { Geometry } from '../../../src/grid/hand/geometry.ts';

const widths = [100, 50, 80];
const model: GridModel = {
  name: 'Widths',
  rowCount: 1000,
  columnCount: 3,
  frozen: { rows: 2, columns: 1 },
  columnWidth: (column) => widths[column] ?? 0,
  rowLabel: (row) => String(row + 1),
  columnLabel: (column) => String(column),
  cell: () => ({ text: '' }),
  editText: () => '',
  used: () => ({ rows: 0, columns: 0 }),
};

test('a point finds the cell it lies in, and the nearest one outside', () => {
  const geometry = new Geometry(model, 'fine');
  expect(geometry.at(0, 0)).toEqual({ row: 0, column: 0 });
  expect(geometry.at(99, 30)).toEqual({ row: 0, column: 0 });
  expect(geometry.at(100, 31)).toEqual({ row: 1, column: 1 });
  expect(geometry.at(149, 62)).toEqual({ row: 2, column: 1 });
  expect(geometry.at(5000, 99_999)).toEqual({ row: 999, column: 2 });
  expect(geometry.at(-5, -5)).toEqual({ row: 0, column: 0 });
});

test('frozen panes are as large as what is frozen, and rows are higher for fingers', () => {
  expect(new Geometry(model, 'fine').frozenHeight).toBe(62);
  expect(new Geometry(model, 'fine').frozenWidth).toBe(100);
  expect(new Geometry(model, 'coarse').frozenHeight).toBe(88);
});

test('a changed width counts once it is measured again', () => {
  const geometry = new Geometry(model, 'fine');
  widths[0] = 200;
  expect(geometry.left(1)).toBe(100);
  geometry.measure();
  expect(geometry.left(1)).toBe(200);
  widths[0] = 100;
});

test('a longer last row makes room for its label', () => {
  const tall = { ...model, rowCount: 1_000_000 };
  expect(new Geometry(tall, 'fine').rowHeadingWidth).toBeGreaterThan(
    new Geometry(model, 'fine').rowHeadingWidth,
  );
});
