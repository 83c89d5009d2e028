import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/timeline/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The readings are invented; the straight line, its scatter and the almanac are worked out by hand in the
// template's expected.ts. Least squares and their standard deviations: JCGM 100:2008, H.3; Student's t: table G.2.

const rows = Array.from({ length: 16 }, (_, index) => 12 + index);

/** The sheet with these moments and nothing else. */
function withMoments(moments: readonly (readonly [time: string, reading: string])[]) {
  const sheet = openFilled('timeline');
  for (const [index, row] of rows.entries()) {
    sheet.type(`A${row}`, moments[index]?.[0] ?? '');
    sheet.type(`B${row}`, moments[index]?.[1] ?? '');
  }
  return sheet;
}

describe('a bench by the window through a November afternoon', () => {
  comesToWhatItSays(openFilled('timeline'), expected);
});

describe('other hours', () => {
  it('a lamp that gains a tenth an hour is a third over after 3 h 20 min', () => {
    const { valueOf } = withMoments([
      ['09:00', 'f/4'],
      ['10:00', 'f/4 1/10'],
      ['11:00', 'f/4 2/10'],
    ]);
    expect(Number(valueOf('B7'))).toBeCloseTo(0.1, 9);
    expect(Number(valueOf('D8')) * 1440).toBeCloseTo(12 * 60 + 20, 6);
    expect(valueOf('B6')).toMatch(
      /^Up 0\.10 stop an hour; the tolerance of 1\/3 stop is left at 12:20\./,
    );
  });

  it('half the lux an hour is a stop an hour, past midnight too', () => {
    const { valueOf } = withMoments([
      ['23:00', '800 lx'],
      ['00:00', '400 lx'],
      ['01:00', '200 lx'],
    ]);
    expect(Number(valueOf('I14'))).toBeCloseTo(2, 9);
    expect(Number(valueOf('B7'))).toBeCloseTo(-1, 9);
    expect(Number(valueOf('D8')) * 1440).toBeCloseTo(23 * 60 + 20, 6);
  });

  it('readings that go to and fro do not drift', () => {
    const { valueOf, errors } = withMoments([
      ['09:00', 'f/4'],
      ['10:00', 'f/4 1/10'],
      ['11:00', 'f/4'],
      ['12:00', 'f/4 1/10'],
      ['13:00', 'f/4'],
    ]);
    // The line is level at 0.04: √((3 · 0.04² + 2 · 0.06²) / 3) = 0.06325; 3.18 · 0.06325 / √10 = 0.0636.
    expect(valueOf('B6')).toMatch(
      /^No drift can be told from the scatter: less than 0\.06 stop an hour\./,
    );
    expect(valueOf('D8')).toBe('');
    expect(errors()).toEqual([]);
  });

  it('of two readings or none nothing is said, and nothing is an error', () => {
    const two = withMoments([
      ['09:00', 'f/4'],
      ['10:00', 'f/5.6'],
    ]);
    expect(two.valueOf('B6')).toMatch(/^Three readings at least/);
    expect(Number(two.valueOf('B9'))).toBeCloseTo(1, 9);
    expect(two.errors()).toEqual([]);
    expect(withMoments([]).errors()).toEqual([]);
  });

  it('another meter that reads over is set right by what it reads over', () => {
    const { type, valueOf } = openFilled('timeline');
    type('D16', '2/10');
    expect(Number(valueOf('E16'))).toBeCloseTo(-0.9, 9);
  });

  it('without a place there is no sun, and the drift is there all the same', () => {
    const { type, valueOf, errors } = openFilled('timeline');
    type('D3', '');
    expect(valueOf('D5')).toBe('');
    expect(valueOf('B6')).toBe(
      'Down 0.34 stop an hour; the tolerance of 1/3 stop is left at 14:06.',
    );
    expect(errors()).toEqual([]);
  });

  it('in a polar night the sun neither rises nor sets', () => {
    const { type, valueOf, errors } = openFilled('timeline');
    type('D3', '75°');
    expect([valueOf('B5'), valueOf('D5')]).toEqual(['none', 'none']);
    expect(errors()).toEqual([]);
  });
});
