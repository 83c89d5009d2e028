import { expect, test } from 'vitest';
import { callAtCaret } from '../../../src/formula/caret.ts';
import { tokensOf } from '../../../src/formula/tokens.ts';

/** The bar marks the caret. */
function at(text: string) {
  const caret = text.indexOf('|');
  const call = callAtCaret(text.replace('|', ''), caret);
  return call && `${call.name} ${String(call.argument)}`;
}

test.each([
  ['=STOPS(|', 'STOPS 0'],
  ['=stops(A1|', 'STOPS 0'],
  ['=STOPS(A1,|', 'STOPS 1'],
  ['=STOPS(A1, |B1)', 'STOPS 1'],
  ['=STOPS(A1,B1|)', 'STOPS 1'],
  ['=STOPS(A1,B1)|', undefined],
  ['=STO|PS(A1)', undefined],
  ['=IF(A1>1,STOPS(A1,(B1+|', 'STOPS 1'],
  ['=IF(A1>1,STOPS(A1,B1),|', 'IF 2'],
  ['=IF("a,b(",|', 'IF 1'],
  ['=IF("a,|b(",1)', 'IF 0'],
  ['=SUM({1,2,|3},4)', 'SUM 0'],
  ['=SUM({1,2},|4)', 'SUM 1'],
  ['=(1,|', undefined],
  ['|', undefined],
])('in %s the caret is in %s', (text, call) => {
  expect(at(text)).toBe(call);
});

test('tokens lie end to end over the whole text, finished or not', () => {
  for (const text of ['=SUM( A2 : A10 )', '=IF("x', "='Ice", '=1+*)(', 'plain', '', '=A1:']) {
    expect(
      tokensOf(text)
        .map((token) => token.text)
        .join(''),
    ).toBe(text);
    tokensOf(text).forEach((token) => {
      expect(text.slice(token.start, token.end)).toBe(token.text);
    });
  }
});

test('tokens are named for colouring', () => {
  expect(tokensOf('=SUM(A1 : B2, key)*2&"x"').map(({ kind, text }) => `${kind} ${text}`)).toEqual([
    'start =',
    'function SUM',
    'open (',
    'reference A1 : B2',
    'comma ,',
    'blank  ',
    'name key',
    'close )',
    'operator *',
    'number 2',
    'operator &',
    'text "x"',
  ]);
});
