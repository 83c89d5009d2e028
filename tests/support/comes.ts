import { expect, it } from 'vitest';
import type { ExpectedCell } from '../../templates/expected.ts';
import type { openFilled } from './filled.ts';

/** Every cell that a template says must come to something does, and none is an error. */
export function comesToWhatItSays(
  sheet: Pick<ReturnType<typeof openFilled>, 'valueOf' | 'errors'>,
  expected: readonly ExpectedCell[],
): void {
  it.each(expected)('$cell comes to $value: $why', ({ cell, value, within = 1e-12 }) => {
    const got = sheet.valueOf(cell);
    if (typeof value === 'string') expect(got).toBe(value);
    else expect(Math.abs(Number(got) - value)).toBeLessThanOrEqual(within);
  });

  it('no cell is an error', () => {
    expect(sheet.errors()).toEqual([]);
  });
}
