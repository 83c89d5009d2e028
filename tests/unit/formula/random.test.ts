import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formulaFrom } from '../../../src/formula/bind.ts';
import { callAtCaret } from '../../../src/formula/caret.ts';
import { formulaFromJson, formulaToJson } from '../../../src/formula/codec.ts';
import { tokensOf } from '../../../src/formula/tokens.ts';
import { writeFormula } from '../../../src/formula/write.ts';
import { runs } from '../../support/runs.ts';
import { PlainLayout } from './layout.ts';

const layout = new PlainLayout();

const bits = fc.constantFrom(
  ...[
    '(',
    ')',
    '{',
    '}',
    ',',
    ';',
    ':',
    '!',
    '$',
    '#',
    '@',
    '%',
    '"',
    "'",
    '[',
    ']',
    ' ',
    '\n',
    '.',
  ],
  ...[
    '+',
    '-',
    '*',
    '/',
    '^',
    '&',
    '=',
    '<',
    '>',
    '<>',
    '1',
    '2.5',
    '1E3',
    'TRUE',
    '#N/A',
    '#REF!',
  ],
  ...[
    'A1',
    'b$2',
    '$C',
    'A:B',
    '1:2',
    'SUM(',
    'Walk!',
    "'Ice house'!",
    'Loft!',
    'Key_side',
    'R',
    'é',
    '“',
  ],
);
const scraps = fc.array(bits, { maxLength: 30 }).map((list) => `=${list.join('')}`);
const anything = fc.oneof(
  scraps,
  fc.string({ unit: 'binary' }).map((text) => `=${text}`),
);

test('whatever is typed, it is a formula or a sentence with a character in the text', () => {
  let formulas = 0;
  fc.assert(
    fc.property(anything, (text) => {
      const formula = formulaFrom(text, 'walk', layout);
      if ('reason' in formula) {
        expect(formula.reason).toMatch(/^[\p{Lu}“].*[.]$/su);
        expect(formula.at).toBeGreaterThanOrEqual(0);
        expect(formula.at).toBeLessThanOrEqual(text.length);
        return;
      }
      formulas++;
      const shown = writeFormula(formula, 'walk', layout);
      const again = formulaFrom(shown, 'walk', layout);
      if ('reason' in again) throw new Error(`${shown}: ${again.reason}`);
      expect(writeFormula(again, 'walk', layout)).toBe(shown);
      expect(formulaFromJson(formulaToJson(formula))).toEqual(formula);
    }),
    { numRuns: runs(5000) },
  );
  expect(formulas).toBeGreaterThan(100);
});

test('tokens cover any text, and the caret can stand anywhere in it', () => {
  fc.assert(
    fc.property(anything, fc.nat(40), (text, caret) => {
      expect(tokensOf(text).reduce((end, token) => (token.start === end ? token.end : -1), 0)).toBe(
        text.length,
      );
      const call = callAtCaret(text, caret);
      expect(call === undefined || call.start < caret).toBe(true);
    }),
    { numRuns: runs(5000) },
  );
});
