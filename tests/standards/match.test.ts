import { describe, expect, it } from 'vitest';
import { call } from '../../functions/call.ts';
import { byName } from '../../functions/index.ts';
import type { Argument } from '../../functions/values.ts';
import { settings } from '../unit/functions/support/settings.ts';

const the = (name: string, ...given: readonly Argument[]) => {
  const definition = byName.get(name);
  if (!definition) throw new Error(`There is no ${name}`);
  return call(definition, given, settings);
};

const table = (rows: readonly (readonly (string | number)[])[]): Argument => ({
  cells: rows.flat().map((value) => ({ value })),
  width: rows[0]?.length ?? 1,
});

/** Mired shifts between usual lights as photographic dictionaries tabulate them: whole mired, positive warms. */
const printed = [
  ['5500 to 3200', 5500, 3200, 131],
  ['5500 to 3400', 5500, 3400, 112],
  ['3200 to 5500', 3200, 5500, -131],
  ['3400 to 5500', 3400, 5500, -112],
  ['3200 to 3400', 3200, 3400, -18],
  ['3400 to 3200', 3400, 3200, 18],
] as const;

describe('filters named after what they turn into what, by the mired tables', () => {
  const kit = table(printed.map(([name, , , mired]) => [name, mired, 0, 0.5]));

  it.each(printed)('FILTERFOR picks %s for it, FILTERSHIFT says the printed shift', (...row) => {
    const [name, from, to, mired] = row;
    expect(the('FILTERFOR', from, 0, to, 0, kit)).toBe(name);
    expect(the('FILTERSHIFT', name, kit)).toBe(mired);
    const through = the('KELVINTHROUGH', from, mired);
    expect(Math.abs(Number(through) - to)).toBeLessThan(10);
  });
});

describe('two lights mixed by their tristimulus values (CIE 15)', () => {
  /** Illuminants A, D50 and D65: x, y as CIE 15 prints them. */
  const points = {
    A: [0.44758, 0.40745],
    D50: [0.34567, 0.35851],
    D65: [0.31272, 0.32903],
  } as const;

  it.each([
    ['A', 'D65', 300, 100],
    ['A', 'D65', 20, 180],
    ['A', 'D50', 100, 100],
    ['D65', 'A', 70, 30],
  ] as const)('%s and %s, %d and %d: MIXSHARE finds the share back', (first, second, one, two) => {
    const [[x1, y1], [x2, y2]] = [points[first], points[second]];
    const X = (one * x1) / y1 + (two * x2) / y2;
    const sum = one / y1 + two / y2;
    const share = the('MIXSHARE', x1, y1, x2, y2, X / sum, (one + two) / sum);
    expect(share).toBeCloseTo(two / (one + two), 9);
  });
});
