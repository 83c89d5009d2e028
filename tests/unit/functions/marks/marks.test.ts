import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  exactMark,
  inTenths,
  isMark,
  marks,
  nominalMark,
  wholeAndTenths,
} from '../../../../functions/marks/index.ts';
import { call } from '../../../../functions/call.ts';
import { FEXACT } from '../../../../functions/index.ts';
import type { Argument } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

describe('what an engraved mark stands for', () => {
  test.each([
    [5.6, 2 ** (5 / 2)],
    [2.8, 2 ** (3 / 2)],
    [3.2, 2 ** (10 / 6)],
    [6.3, 2 ** (16 / 6)],
    [0.7, 2 ** (-1 / 2)],
    [1, 1],
    [16, 16],
    [128, 128],
    [22, 2 ** (9 / 2)],
    [9.5, 2 ** (13 / 4)],
  ])('f/%d is exactly %d', (nominal, exact) => {
    expect(exactMark(nominal)).toBeCloseTo(exact, 13);
  });

  test('f/1.2 and f/13 fit a half and a third stop: the nearer one is meant', () => {
    expect(exactMark(1.2)).toBe(2 ** (1 / 4));
    expect(exactMark(13)).toBeCloseTo(2 ** (22 / 6), 13);
  });

  test('naming the scale settles which one is meant', () => {
    expect(exactMark(1.2, 3)).toBeCloseTo(2 ** (2 / 6), 13);
    expect(exactMark(1.2, 2)).toBe(2 ** (1 / 4));
    expect(exactMark(13, 2)).toBe(2 ** (15 / 4));
    expect(exactMark(3.2, 1)).toBe(3.2);
  });

  test('past the end of the scale a name has two digits', () => {
    // 2^(29/3) is 812.7, 2^(19/2) is 724.1.
    expect(nominalMark(2 ** (29 / 3), 3)).toBe(810);
    expect(nominalMark(2 ** (19 / 2), 2)).toBe(720);
    expect(nominalMark(2 ** 9.5 * 1.01, 1)).toBe(720);
    expect(nominalMark(0.25, 3)).toBe(0.25);
  });

  test('any other number is taken as it stands', () => {
    expect(exactMark(5.61)).toBe(5.61);
    expect(exactMark(3.6)).toBe(3.6);
    expect(isMark(3.6)).toBe(false);
    expect(isMark(3.5)).toBe(true);
  });

  test('from f/5.6 to f/8 is exactly one stop, from f/2.8 to f/11 four', () => {
    expect(2 * Math.log2(exactMark(8) / exactMark(5.6))).toBeCloseTo(1, 13);
    expect(2 * Math.log2(exactMark(11) / exactMark(2.8))).toBeCloseTo(4, 13);
  });
});

describe('the scales', () => {
  test.each([1, 2, 3] as const)(
    'on the scale of 1/%i stop each name is near its value',
    (parts) => {
      for (const { nominal, exact } of marks[parts]) {
        // The loosest names are 3.5, 1.2 and 0.8, under a sixth of a stop off.
        expect(Math.abs(2 * Math.log2(nominal / exact))).toBeLessThan(1 / 6);
      }
    },
  );

  test.each([1, 2, 3] as const)(
    'on the scale of 1/%i stop every name finds its own mark',
    (parts) => {
      for (const { nominal, exact } of marks[parts]) {
        expect(nominalMark(exact, parts)).toBe(nominal);
        expect(exactMark(nominal, parts)).toBe(exact);
      }
    },
  );

  test('the nearest name is never further off than half a step', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.7, max: 127, noNaN: true }),
        fc.constantFrom(1, 2, 3),
        (fNumber, parts) => {
          const named = exactMark(nominalMark(fNumber, parts), parts);
          expect(Math.abs(2 * Math.log2(named / fNumber))).toBeLessThanOrEqual(0.5 / parts + 1e-9);
        },
      ),
    );
  });
});

describe('tenths above a whole stop, as meters are read out', () => {
  test.each([
    [2 ** 1.5, 'f/2.8'],
    [2 ** 1.65, 'f/2.8 + 0.3'],
    [2 ** 2.99, 'f/8'],
    [0.9, 'f/0.7 + 0.7'],
    [1, 'f/1'],
  ])('%d reads %s', (exact, words) => {
    expect(inTenths(exact)).toBe(words);
  });

  test('whole stop and tenths together are the f-number to half a tenth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.7, max: 127, noNaN: true }), (fNumber) => {
        const { whole, tenths } = wholeAndTenths(fNumber);
        const said = exactMark(whole) * 2 ** (tenths / 20);
        expect(Math.abs(2 * Math.log2(said / fNumber))).toBeLessThanOrEqual(0.05 + 1e-9);
        expect(tenths).toBeGreaterThanOrEqual(0);
        expect(tenths).toBeLessThanOrEqual(9);
      }),
    );
  });
});

describe('FEXACT', () => {
  const exact = (...args: readonly Argument[]) => call(FEXACT, args, settings);

  test('leaves an exact value what it is, though its name fits another scale as well', () => {
    expect(exact(2 ** 0.25)).toBe(2 ** 0.25);
    expect(exact(2 ** (1 / 3))).toBe(2 ** (1 / 3));
  });

  test('a mark that the scale does not have keeps its own value', () => {
    expect(exact('f/13', 1)).toBeCloseTo(2 ** (22 / 6), 13);
    expect(exact('f/3.2', 1)).toBeCloseTo(2 ** (10 / 6), 13);
  });
});
