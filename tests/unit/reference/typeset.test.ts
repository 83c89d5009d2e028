import { describe, expect, it, test } from 'vitest';
import { byName, catalogue } from '../../../functions/index.ts';
import { abbreviate, type Abbreviated } from '../../../src/reference/abbreviate.ts';
import { spoken } from '../../../src/reference/spoken.ts';
import { sizeOf, termOf, type Term } from '../../../src/reference/term.ts';
import { equationOf } from '../../../src/reference/typeset.ts';

const plain = catalogue.flatMap(({ name, formula }) =>
  typeof formula === 'string' ? [{ name, formula }] : [],
);

function heard(formula: string): string {
  const equation = equationOf(formula);
  if (!equation) throw new Error(`${formula} has no equation.`);
  return spoken(equation.is);
}

describe('a plain formula in print', () => {
  it.each([
    ['key / fill', 'key over fill'],
    ['key / fill / own', 'the fraction key over fill times own, end of fraction,'],
    ['(key + fill) * own', 'open bracket key plus fill close bracket times own'],
    ['key + fill * own', 'key plus fill times own'],
    ['key - (fill - own)', 'key minus open bracket fill minus own close bracket'],
    ['key - (fill + own)', 'key minus open bracket fill plus own close bracket'],
    ['key + -3 * fill', 'key minus 3 times fill'],
    ['(key / fill)^2', 'open bracket key over fill close bracket squared'],
    ['2^(stops / 2)', '2 to the power of stops over 2'],
    ['2^(-stops)', '2 to the power of minus stops'],
    ['2 * LN(key) / LN(2)', '2 times the logarithm to base 2 of open bracket key close bracket'],
    ['-LN(share) / LN(2)', 'minus the logarithm to base 2 of open bracket share close bracket'],
    [
      'density / LOG10(2)',
      'the fraction density over the logarithm to base 10 of open bracket 2 close bracket, end of fraction,',
    ],
    ['SQRT(SUMSQ(readings))', 'the square root of the sum of readings squared'],
    ['DEGREES(ATAN(RADIANS(angle)))', 'arctan open bracket angle close bracket'],
    ['1000000 / kelvin', 'the fraction 10 to the power of 6 over kelvin, end of fraction,'],
    ['new_distance * x1', 'new distance times x1'],
    [
      'IF(key <= 7000, fill, IF(key > 9000, own, NA()))',
      'fill if key is at most 7000; own if key is more than 9000; no answer otherwise',
    ],
    ['IF(COUNT(fps) = 0, 1, fps)', '1 if fps is left out; fps otherwise'],
    [
      'volts * IF(phases = 3, SQRT(3), 1)',
      'volts times open bracket the square root of 3 if phases equals 3; 1 otherwise close bracket',
    ],
  ])('%s', (formula, words) => {
    expect(heard(formula)).toBe(words);
  });

  it('is there for every function that has one', () => {
    expect(plain.length).toBeGreaterThan(100);
    for (const { name, formula } of plain) expect(equationOf(formula), name).toBeDefined();
  });

  it('is none where the text is no formula', () => {
    expect(equationOf('t = angle / 360 / fps (')).toBeUndefined();
  });
});

describe('letters for what comes again', () => {
  /** The formula with each letter written out again. */
  function writtenOut({ term, where }: Abbreviated): Term {
    return where.reduceRight(
      (whole, { letter, is }) => put(whole, letter, is),
      put(term, '', term),
    );
  }
  function put(term: Term, letter: string, is: Term): Term {
    if (term.kind === 'word') return term.text === letter ? is : term;
    if (term.kind === 'call') return { ...term, of: term.of.map((one) => put(one, letter, is)) };
    if (term.kind === 'minus') return { ...term, of: put(term.of, letter, is) };
    if (term.kind !== 'binary') return term;
    return { ...term, left: put(term.left, letter, is), right: put(term.right, letter, is) };
  }

  test.each(plain)('$name means the same with and without', ({ formula }) => {
    const term = termOf(formula);
    if (!term) throw new Error('No formula.');
    const short = abbreviate(term);
    // A later letter may stand inside what an earlier one means, so all are put back in turn.
    let whole = writtenOut(short);
    for (const _ of short.where) whole = writtenOut({ term: whole, where: short.where });
    expect(whole).toEqual(term);
  });

  test('a long formula is short enough to read', () => {
    const formula = byName.get('PANELLUX')?.formula;
    const term = termOf(typeof formula === 'string' ? formula : '');
    if (!term) throw new Error('No formula.');
    const { term: short, where } = abbreviate(term);
    expect(sizeOf(term)).toBeGreaterThan(150);
    expect(sizeOf(short)).toBeLessThan(sizeOf(term) / 2);
    expect(new Set(where.map(({ letter }) => letter)).size).toBe(where.length);
  });

  test('a short formula keeps its words', () => {
    const term = termOf('lux * (distance / new_distance)^2');
    expect(term && abbreviate(term).where).toEqual([]);
  });
});
