import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { margin, planPages } from '../../../src/app/paper.ts';

// Sizes of ISO 216 and ANSI/ASME Y14.1 paper, at 96 CSS pixels to the inch (CSS Values 4).
const a4 = { width: (210 / 25.4) * 96, height: (297 / 25.4) * 96 };
const numbers = 40;

describe('the plan of pages', () => {
  it('leaves a narrow sheet upright at full size', () => {
    const plan = planPages('A4', [200, 300], numbers);
    expect(plan.paper.width).toBeCloseTo(a4.width, 6);
    expect(plan.paper.height).toBeCloseTo(a4.height, 6);
    expect(plan).toMatchObject({ scale: 1, runs: [[0, 1]] });
  });

  it('is 8 1/2 by 11 inches for Letter', () => {
    expect(planPages('Letter', [100], numbers).paper).toEqual({ width: 816, height: 1056 });
  });

  it('turns the paper for a wide sheet and makes it as much smaller as it must', () => {
    const plan = planPages('A4', [500, 500, 460], numbers);
    expect(plan.paper.width).toBeCloseTo(a4.height, 6);
    expect(plan.scale).toBeCloseTo((a4.height - 2 * margin) / 1500, 6);
    expect(plan.runs).toEqual([[0, 1, 2]]);
  });

  it('goes below 60 % only for a column that would not fit beside the first', () => {
    const { runs, scale, room } = planPages('A4', [1000, 1100, 300], numbers);
    expect(runs).toEqual([
      [0, 1],
      [0, 2],
    ]);
    expect(scale).toBeCloseTo(room / 2140, 6);
  });

  it('begins a run with words that go on over the next column, if that takes no more runs', () => {
    const columns = [300, 400, 300, 300, 400, 300];
    const plain = planPages('A4', columns, numbers);
    expect(plain.runs).toEqual([
      [0, 1, 2, 3],
      [0, 4, 5],
    ]);
    expect(planPages('A4', columns, numbers, new Set([3])).runs).toEqual([
      [0, 1, 2],
      [0, 3, 4, 5],
    ]);
  });

  it('repeats the first column where the columns run on, and loses none', () => {
    const widths = fc.array(fc.integer({ min: 20, max: 600 }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(widths, (columns) => {
        const { runs, scale, room } = planPages('A4', columns, numbers);
        expect(runs.every(([first]) => first === 0)).toBe(true);
        expect([0, ...runs.flatMap((run) => run.slice(1))]).toEqual(columns.map((_, at) => at));
        expect(scale).toBeGreaterThanOrEqual(0.6);
        expect(scale).toBeLessThanOrEqual(1);
        for (const run of runs) {
          const wide = run.reduce((sum, column) => sum + (columns[column] ?? 0), numbers);
          expect(wide * scale).toBeLessThanOrEqual(room + 1e-6);
        }
      }),
    );
  });
});
