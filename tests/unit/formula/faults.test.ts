import { describe, expect, test } from 'vitest';
import { formulaFrom } from '../../../src/formula/bind.ts';
import { readFormula } from '../../../src/formula/read.ts';
import { PlainLayout } from './layout.ts';

const layout = new PlainLayout();

describe('what is no formula is said in a sentence, with the character it is about', () => {
  test.each([
    ['=', 1, 'Nothing stands after the “=”.'],
    ['=   ', 1, 'Nothing stands after the “=”.'],
    ['=(A1+2', 1, 'A bracket is not closed.'],
    ['=SUM(A1,(B1)', 4, 'A bracket is not closed.'],
    ['=A1)', 3, 'A bracket closes that was not opened, or closes too early.'],
    ['=(A1+)', 5, 'A bracket closes that was not opened, or closes too early.'],
    ['=1+', 3, 'The formula ends too early.'],
    ['=1+*2', 3, '“*” cannot be read here.'],
    ['="a', 1, 'A text is not closed with a quote.'],
    ['=A1 B1', 4, 'An operator is missing before “B1”.'],
    ['=STOPS(400 lx, A1)', 11, 'In a formula a number with a unit stands in quotes: "400 lx".'],
    ['=A1*1.5 m', 8, 'In a formula a number with a unit stands in quotes: "1.5 m".'],
    ['=1.5 B1', 5, 'An operator is missing before “B1”.'],
    ['=1 constructor', 3, 'An operator is missing before “constructor”.'],
    ['=A1,B1', 3, 'A comma stands only between the arguments of a function.'],
    ['=SUM((A1,B1))', 8, 'A comma stands only between the arguments of a function.'],
    ['=SUM(A1;B1)', 7, 'Arguments are separated by commas.'],
    ['=SUM (A1)', 4, 'No blank stands between a function and its bracket.'],
    ['=@A1', 1, '“@” is not used here.'],
    ['=A1#', 3, '“#” is not used here.'],
    ['={1,2}', 1, 'A list in braces stands inside a function.'],
    ['=SUM({1,2)', 9, 'A bracket closes that was not opened, or closes too early.'],
    ['=SUM({A1})', 6, 'A list in braces holds plain values only.'],
    ['=Jan:Mar!A1', 1, 'A reference stays on one sheet.'],
    ["='Jan:Mar'!A1", 1, 'A reference stays on one sheet.'],
    ["=Walk!A1:'Ice house'!B2", 1, 'Both ends of a range are on one sheet.'],
    ['=A1:Walk!B2', 1, 'Both ends of a range are on one sheet.'],
    ['=[old.xlsx]Walk!A1', 1, 'A formula cannot reach into another file.'],
    ['=Walk!Key_side', 1, 'Names belong to the whole book: leave out the sheet.'],
    ['=A1:INDEX(A1:A3,2)', 3, 'A range needs a cell at both ends of its colon.'],
    ['=“2.8”', 1, '““2.8”” cannot be read in a formula.'],
    ['=R+1', 1, '“R” cannot be read here.'],
    ['="a\u0000b"', 3, 'A character here cannot be read.'],
    ['=Loft!A1', 0, 'There is no sheet “Loft”.'],
  ])('%s', (text, at, reason) => {
    expect(formulaFrom(text, 'walk', layout)).toEqual({ reason, at });
  });
});

describe('long and deep formulas are refused, not choked on', () => {
  test.each([
    ['10,000 brackets', '='.padEnd(4001, '(') + '1'.padEnd(4001, ')')],
    ['10,000 signs', '='.padEnd(8001, '-') + '1'],
    ['functions within functions', `=${'ABS('.repeat(2000)}1`],
  ])('%s: at most 100 deep', (_, text) => {
    expect(readFormula(text)).toMatchObject({ reason: 'A formula nests at most 100 deep.' });
  });

  test('10,000 brackets as read from a file', () => {
    const text = `=${'('.repeat(10_000)}1${')'.repeat(10_000)}`;
    expect(readFormula(text, Infinity)).toMatchObject({
      reason: 'A formula nests at most 100 deep.',
    });
  });

  test('a hundred brackets are read', () => {
    expect(readFormula(`=${'('.repeat(99)}1${')'.repeat(99)}`)).toHaveProperty('shape');
  });

  test('more than 8192 characters', () => {
    expect(readFormula(`="${'x'.repeat(8200)}"`)).toEqual({
      reason: 'A formula has at most 8192 characters; this one has 8203.',
      at: 8192,
    });
  });

  test('more than 1000 operators in a row', () => {
    expect(readFormula(`=1${'+1'.repeat(1001)}`)).toMatchObject({
      reason: 'A formula has at most 1000 operators.',
    });
  });
});
