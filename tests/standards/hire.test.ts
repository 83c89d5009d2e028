import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/hire/expected.ts';
import { film } from '../../templates/hire/plan.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The rates are invented; the rules of hire are common practice. What they come to is worked out by
// hand in templates/hire/expected.ts.

const sheet = openFilled('hire');

describe('what is hired, for where and how long', () => {
  comesToWhatItSays(sheet, expected);

  it('pieces out on a day are those whose days hold it, counted one by one', () => {
    for (const [index, day] of film.days.entries()) {
      const out = film.hires
        .filter((hire) => hire.out <= day && day <= hire.back)
        .reduce((sum, { count }) => sum + Number(count), 0);
      expect(sheet.valueOf(`F${24 + index}`)).toBe(out);
    }
  });

  it('ten days without a week’s rate are a week as three, and three more', () => {
    const { type, valueOf } = openFilled('hire');
    type('E14', '2026-10-04');
    expect(valueOf('F14')).toBe(10);
    expect(valueOf('K14')).toBe(6 * 6 * (3 + 3));
  });

  it('a smaller budget says by how much it is over', () => {
    const { type, valueOf } = openFilled('hire');
    type('F1', '800');
    expect(valueOf('B4')).toBe('76.20 over the budget');
  });

  it('a row of a place that has no column is said, not lost', () => {
    const { type, valueOf } = openFilled('hire');
    type('B10', 'Quay');
    expect(valueOf('E32')).toBe(108);
    expect(valueOf('E31')).toBe(842.5);
  });
});
