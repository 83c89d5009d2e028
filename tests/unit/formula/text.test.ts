import { describe, expect, test } from 'vitest';
import { formulaFrom } from '../../../src/formula/bind.ts';
import { formulaFromJson, formulaToJson } from '../../../src/formula/codec.ts';
import { writeFormula } from '../../../src/formula/write.ts';
import { PlainLayout } from './layout.ts';

const layout = new PlainLayout();

function bound(text: string) {
  const formula = formulaFrom(text, 'walk', layout);
  if ('reason' in formula) throw new Error(`${text}: ${formula.reason}`);
  return formula;
}

const written = (text: string) => writeFormula(bound(text), 'walk', layout);

describe('a formula comes back as it was typed', () => {
  test.each([
    '=1+2',
    '= A1  +\t$B$2 ',
    '=SUM( A2 : A10 )',
    '=SUM(A:A)+SUM($C:D)+SUM(1:1)+SUM($2:3)',
    "='Ice house'!$A1*2",
    '=Walk!A1',
    '=Key_side/fill_side',
    '="He said ""2.8"" & left"&A1',
    '=IF(A1>=B1,"over","under")',
    '=SUM({1,2;-3,4})',
    '=F(1,)',
    '=F(,)',
    '=F( )',
    '=-A1^2%',
    '=((A1))',
    '=1E-3*.5',
    '=IFERROR(#N/A,#REF!)',
    '=A1\n+B1',
    '=TRUE',
    '=ALL100000',
  ])('%s', (text) => {
    expect(written(text)).toBe(text);
  });
});

describe('references, functions, truths and names are put as they are known', () => {
  test.each([
    ['=sum(a2:a10)', '=SUM(A2:A10)'],
    ['=$a$1+aa10', '=$A$1+AA10'],
    ['=true=False', '=TRUE=FALSE'],
    ['=KEY_SIDE', '=Key_side'],
    ["=walk!a1+'walk'!a2", '=Walk!A1+Walk!A2'],
    ["='ICE HOUSE'!b2", "='Ice house'!B2"],
    ['=Walk!A1:Walk!B2', '=Walk!A1:B2'],
    ['=C5:A2', '=A2:C5'],
    ['=$C5:A$2', '=A$2:$C5'],
    ['=c:a', '=A:C'],
    ['=A : C', '=A : C'],
    ['=2 : 1', '=1 : 2'],
  ])('%s reads %s', (typed, shown) => {
    expect(written(typed)).toBe(shown);
  });
});

describe('beyond the sheet nothing can be meant', () => {
  test.each(['=A100001', '=ALM1', '=A0', '=A01', '=A9999999', '=A1:A100001', '=ALM:ALM'])(
    '%s reads #REF!',
    (text) => {
      expect(written(text)).toBe('=#REF!');
    },
  );
});

test('a formula reads the same written down and taken up again', () => {
  const text = "=SUM('Ice house'!$A2 : B$10)+A1*Key_side-SUM(B:$C)-SUM(1:1)+Walk!A1";
  const json: unknown = JSON.parse(JSON.stringify(formulaToJson(bound(text))));
  const again = formulaFromJson(json as ReturnType<typeof formulaToJson>);
  expect(again).toEqual(bound(text));
});

test.each([
  { pieces: ['=', '+', ''], references: ['cell walk r1 c1'] },
  { pieces: ['=', ''], references: ['cell walk r1'] },
  { pieces: ['=', ''], references: ['range walk r1 c1 r2 c2 ;'] },
  { pieces: ['=', ''], references: ['cell wa!lk r1 c1'] },
  { pieces: ['=A1+', ''], references: ['lost'] },
  { pieces: ['=SUM(', ''], references: ['lost'] },
])('damaged: %j', (json) => {
  expect(formulaFromJson(json)).toBeUndefined();
});

test('seen from another sheet, and from none, references name their sheet', () => {
  const formula = bound("=A1+Walk!A2+'Ice house'!A3");
  expect(writeFormula(formula, 'ice', layout)).toBe("=Walk!A1+Walk!A2+'Ice house'!A3");
  expect(writeFormula(formula, null, layout)).toBe("=Walk!A1+Walk!A2+'Ice house'!A3");
});

test.each([
  ['Walk', 'Walk!A1'],
  ['Walk 2', "'Walk 2'!A1"],
  ["O'Hara", "'O''Hara'!A1"],
  ['A1', "'A1'!A1"],
  ['R', "'R'!A1"],
  ['rc', "'rc'!A1"],
  ['True', "'True'!A1"],
  ['Kühlhaus', 'Kühlhaus!A1'],
  ['Мастерская', "'Мастерская'!A1"],
  ['a!b', "'a!b'!A1"],
  ['2nd', "'2nd'!A1"],
  ['a"b', `'a"b'!A1`],
  ['a.b', "'a.b'!A1"],
])('a sheet called %s is written %s and read again', (name, text) => {
  const book = new PlainLayout();
  book.sheets.set('walk', name);
  const formula = formulaFrom(`=${text}`, 'ice', book);
  expect('reason' in formula ? formula.reason : writeFormula(formula, 'ice', book)).toBe(
    `=${text}`,
  );
});

test('a range whose corners are gone reads what is left, a cell or an emptied range #REF!', () => {
  const book = new PlainLayout();
  const formula = formulaFrom('=SUM(A2:B4)+A2+SUM(2:4)', 'walk', book);
  if ('reason' in formula) throw new Error(formula.reason);
  book.gone.add('r1');
  expect(writeFormula(formula, 'walk', book)).toBe('=SUM(A3:B4)+#REF!+SUM(3:4)');
  book.gone.add('r3');
  expect(writeFormula(formula, 'walk', book)).toBe('=SUM(A3:B3)+#REF!+SUM(3:3)');
  book.gone.add('r2');
  expect(writeFormula(formula, 'walk', book)).toBe('=SUM(#REF!)+#REF!+SUM(#REF!)');
});
