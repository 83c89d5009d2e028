import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/meter-calibration/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The pairs are invented; what they come to is worked out by hand in the template's expected.ts, from the
// exposure equation of ISO 2720 and, for telling apart, JCGM 100:2008 (the Guide to the expression of
// uncertainty in measurement): 4.2 for mean and spread, table G.2 for Student's t.

const rows = Array.from({ length: 12 }, (_, index) => 12 + index);

/** The sheet with these readings in both meters’ columns, and nothing else. */
function withPairs(pairs: readonly (readonly [first: string, second: string])[]) {
  const sheet = openFilled('meter-calibration');
  for (const [index, row] of rows.entries()) {
    sheet.type(`B${row}`, pairs[index]?.[0] ?? '');
    sheet.type(`C${row}`, pairs[index]?.[1] ?? '');
  }
  return sheet;
}

describe('two meters held against each other on the bench', () => {
  comesToWhatItSays(openFilled('meter-calibration'), expected);
});

// Percentage points for 95.00 %, JCGM 100:2008, table G.2, from memory.
const student: readonly (readonly [pairs: number, t: number])[] = [
  [2, 12.71],
  [3, 4.3],
  [4, 3.18],
  [5, 2.78],
  [6, 2.57],
  [8, 2.36],
  [11, 2.23],
];

describe('whether an offset can be told from the spread', () => {
  it.each(student)('of %i pairs the table takes %f standard deviations of the mean', (count, t) => {
    const pairs = Array.from(
      { length: count },
      (_, index) => ['f/4', index % 2 === 0 ? 'f/4' : 'f/4 2/10'] as const,
    );
    const { valueOf } = withPairs(pairs);
    const spread = Number(valueOf('D7'));
    expect(Number(valueOf('B8'))).toBeCloseTo((t * spread) / Math.sqrt(count), 9);
  });

  it('a small mean in a wide spread is none, and nothing is taken off', () => {
    const { valueOf, errors } = withPairs([
      ['f/4', 'f/4 3/10'],
      ['f/4', 'f/4 -2/10'],
      ['f/4', 'f/4 2/10'],
      ['f/4', 'f/4 -1/10'],
    ]);
    // Mean 0.05; √((0.25² + 0.25² + 0.15² + 0.15²) / 3) = √0.05667 = 0.2380; 3.18 · 0.2380 / 2 = 0.3785.
    expect(valueOf('B6')).toBe(
      'Spare meter and House meter cannot be told apart: less than 0.38 stop in 4 pairs.',
    );
    expect(valueOf('B9')).toBe(0);
    expect(Number(valueOf('C26'))).toBeCloseTo(4, 12);
    expect(errors()).toEqual([]);
  });

  it('a meter that reads under says so, and its readings are lifted', () => {
    const { valueOf } = withPairs([
      ['f/4', 'f/4 -3/10'],
      ['f/8', 'f/8 -3/10'],
      ['f/2', 'f/2 -3/10'],
    ]);
    expect(valueOf('B6')).toBe(
      'Spare meter reads 0.30 stop under House meter: it can be told from the spread of 0.00 stop in 3 pairs.',
    );
    expect(Number(valueOf('C26'))).toBeCloseTo(4 * 2 ** 0.15, 9);
  });

  it('of one pair nothing is said, and of none nothing is an error', () => {
    const one = withPairs([['f/4', 'f/4 3/10']]);
    expect(one.valueOf('B6')).toMatch(/^Two pairs at least/);
    expect(one.valueOf('B9')).toBe(0);
    expect(one.errors()).toEqual([]);
    const none = withPairs([]);
    expect(none.errors()).toEqual([]);
    expect(none.valueOf('B7')).toBe('');
  });
});

describe('the constants of the two meters', () => {
  it('two readings in lux that agree are as far apart in f-numbers as the constants are', () => {
    const { valueOf } = withPairs([
      ['340 lx', '340 lx'],
      ['85 lx', '85 lx'],
    ]);
    expect(Number(valueOf('B7'))).toBeCloseTo(Number(valueOf('D8')), 12);
  });

  it('a spot meter is held against a spot meter, by K', () => {
    const sheet = withPairs([
      ['12.5 cd/m2', '14 cd/m2'],
      ['50 cd/m2', '56 cd/m2'],
    ]);
    sheet.type('C2', 'spot');
    sheet.type('C3', 'spot');
    sheet.type('F3', '14');
    // 14 over 12.5 by the reading, and the same by K: it is the same f-number.
    expect(Number(sheet.valueOf('B7'))).toBeCloseTo(0, 12);
    expect(Number(sheet.valueOf('D8'))).toBeCloseTo(Math.log2(12.5 / 14), 12);
  });

  it('a dome’s constant is not held against a spot meter’s', () => {
    const { type, valueOf } = openFilled('meter-calibration');
    type('C3', 'spot');
    expect(valueOf('D8')).toBe('unlike');
  });

  it('with the constant it would agree at, the mean offset in f-numbers from lux is nothing', () => {
    const sheet = withPairs([
      ['340 lx', '390 lx'],
      ['85 lx', '98 lx'],
      ['680 lx', '780 lx'],
    ]);
    sheet.type('D3', String(sheet.valueOf('F8')));
    expect(Number(sheet.valueOf('B7'))).toBeCloseTo(0, 9);
  });
});
