import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { columnLetters } from '../../../src/formula/address.ts';
import { fixAtCaret } from '../../../src/formula/fix.ts';

/** What the key makes of a formula, with the caret as `|`. */
function turn(written: string): string | undefined {
  const caret = written.indexOf('|');
  const text = written.replace('|', '');
  const next = fixAtCaret(text, caret);
  return next && `${next.text.slice(0, next.caret)}|${next.text.slice(next.caret)}`;
}

describe('the key that fixes a reference', () => {
  it.each([
    ['=B4|', '=$B$4|'],
    ['=$B$4|', '=B$4|'],
    ['=B$4|', '=$B4|'],
    ['=$B4|', '=B4|'],
    ['=STOPS(C|12,$A$1)', '=STOPS($C$12|,$A$1)'],
    ['=STOPS(|C12,A1)', '=STOPS($C$12|,A1)'],
    ['=SUM(B2:C9|)', '=SUM($B$2:$C$9|)'],
    ['=SUM($B2:C9|)', '=SUM(B2:C9|)'],
    ['=SUM(B:C|)', '=SUM($B:$C|)'],
    ['=SUM($4:$6|)', '=SUM(4:6|)'],
    ["='Ice house'!B4|+1", "='Ice house'!$B$4|+1"],
    ["='x B2 y'!B4|", "='x B2 y'!$B$4|"],
  ])('%s becomes %s', (before, after) => {
    expect(turn(before)).toBe(after);
  });

  it.each(['B4|', '=1+|', '="B4|"', '=STOPS(|', '=key_side|', '=4|00'])(
    '%s has no reference there',
    (before) => {
      expect(turn(before)).toBeUndefined();
    },
  );

  it('pressed four times, it is as it was', () => {
    fc.assert(
      fc.property(fc.nat(800), fc.nat(9_998), fc.nat(3), (column, row, signs) => {
        const letters = (signs & 1 ? '$' : '') + columnLetters(column);
        const text = `=1+${letters}${signs & 2 ? '$' : ''}${row + 1}`;
        expect(fixAtCaret(text, text.length)?.text).not.toBe(text);
        let now = { text, caret: text.length };
        for (let press = 0; press < 4; press += 1) now = fixAtCaret(now.text, now.caret) ?? now;
        expect(now.text).toBe(text);
      }),
    );
  });
});
