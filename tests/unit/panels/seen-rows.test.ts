import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Selection } from '../../../src/grid/contract.ts';
import { seenRows } from '../../../src/grid/seen-rows.ts';

const rowsOut = fc
  .uniqueArray(fc.nat({ max: 60 }), { maxLength: 30 })
  .map((rows) => rows.toSorted((a, b) => a - b));

const block = (first: number, last: number) => ({
  from: { row: first, column: 1 },
  to: { row: last, column: 2 },
});
const selected = (first: number, last: number): Selection => ({
  focus: { row: first, column: 1 },
  anchor: { row: first, column: 1 },
  lead: { row: last, column: 2 },
  ranges: [{ ...block(first, last), kind: 'cells' }],
});

describe('rows of which some are out of view', () => {
  it('are counted past those, as by walking down the sheet one by one', () => {
    fc.assert(
      fc.property(rowsOut, (out) => {
        const seen = seenRows(out);
        const there = Array.from({ length: 80 }, (_, row) => row).filter(
          (row) => !out.includes(row),
        );
        for (const [index, row] of there.entries()) {
          expect(seen.onSheet(index)).toBe(row);
          expect(seen.inView(row)).toBe(index);
          expect(seen.has(row)).toBe(true);
        }
        for (const row of out) expect(seen.has(row)).toBe(false);
      }),
    );
  });

  it('a block over them is selected in pieces, and the pieces come back as the block', () => {
    fc.assert(
      fc.property(rowsOut, fc.nat({ max: 40 }), fc.nat({ max: 20 }), (out, first, more) => {
        const seen = seenRows(out);
        const inView = selected(first, first + more);
        const onSheet = seen.selectionOnSheet(inView);
        const rows = onSheet.ranges.flatMap(({ from, to }) =>
          Array.from({ length: to.row - from.row + 1 }, (_, index) => from.row + index),
        );
        expect(rows).toHaveLength(more + 1);
        expect(rows.filter((row) => out.includes(row))).toEqual([]);
        expect(seen.selectionInView(onSheet)).toEqual(inView);
      }),
    );
  });

  it('a row out of view is taken for the next below it, and a block of none but such for nothing', () => {
    const seen = seenRows([2, 3, 5]);
    expect(seen.inView(3)).toBe(seen.inView(4));
    expect(seen.rangeInView(block(2, 3))).toBeUndefined();
    expect(seen.rangeInView(block(1, 5))).toEqual(block(1, 2));
    expect(seen.selectionInView(selected(2, 3)).ranges).toEqual([
      { from: { row: 2, column: 1 }, to: { row: 2, column: 1 }, kind: 'cells' },
    ]);
  });

  it('whole columns stay whole', () => {
    const whole = { ...selected(0, 9), ranges: [{ ...block(0, 9), kind: 'columns' }] } as const;
    expect(seenRows([2, 3]).selectionOnSheet(whole).ranges).toEqual([
      { ...block(0, 11), kind: 'columns' },
    ]);
  });
});
