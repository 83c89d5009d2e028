import { describe, expect, test } from 'vitest';
import { readFormula } from '../../../src/formula/read.ts';
import type { Node } from '../../../src/formula/types.ts';

function tree(text: string): Node {
  const read = readFormula(text);
  if ('reason' in read) throw new Error(read.reason);
  return read.shape.tree;
}

/** The tree with a bracket around every operation. */
function bracketed(node: Node | null): string {
  if (node === null) return '·';
  switch (node.kind) {
    case 'reference':
      return `#${String(node.slot)}`;
    case 'call':
      return `${node.name}(${node.arguments.map(bracketed).join(' ')})`;
    case 'sign':
      return `(${node.operator}${bracketed(node.argument)})`;
    case 'percent':
      return `(${bracketed(node.argument)}%)`;
    case 'binary':
      return `(${bracketed(node.left)}${node.operator}${bracketed(node.right)})`;
    case 'array':
      return `{${node.rows.map((row) => row.map(bracketed).join(' ')).join(';')}}`;
    default:
      return JSON.stringify(node.value);
  }
}

describe('binding strength, as spreadsheets have it', () => {
  test.each([
    ['=1+2*3', '(1+(2*3))'],
    ['=1-2-3', '((1-2)-3)'],
    ['=2^3^2', '((2^3)^2)'],
    ['=-2^2', '((-2)^2)'],
    ['=2^-1', '(2^(-1))'],
    ['=-5%', '(-(5%))'],
    ['=-2%^2', '((-(2%))^2)'],
    ['=1&2+3', '(1&(2+3))'],
    ['=1=2&3', '(1=(2&3))'],
    ['=1<2=TRUE', '((1<2)=true)'],
    ['=(1+2)*3', '((1+2)*3)'],
    ['="a""b"', '"a\\"b"'],
    ['=#N/A', '"#N/A"'],
    ['=SUM({1,2;-3,"x"})', 'SUM({1 2;(-3) "x"})'],
  ])('%s', (text, shape) => {
    expect(bracketed(tree(text))).toBe(shape);
  });
});

describe('an argument left out is told from a reference to a blank cell', () => {
  test.each([
    ['=F()', 'F()'],
    ['=F( )', 'F()'],
    ['=F(1,)', 'F(1 ·)'],
    ['=F(,1)', 'F(· 1)'],
    ['=F(,)', 'F(· ·)'],
    ['=F(1,Z9)', 'F(1 #0)'],
    ['=f(1,,Z9,)', 'F(1 · #0 ·)'],
  ])('%s', (text, shape) => {
    expect(bracketed(tree(text))).toBe(shape);
  });
});

test('a filled column shares one tree', () => {
  expect(tree('=STOPS(B2,$B$1)')).toBe(tree('=STOPS(B3,$B$1)'));
});

test('slots count references as they are written', () => {
  expect(bracketed(tree('=B2+SUM(A1 : A9)*Key'))).toBe('(#0+(SUM(#1)*#2))');
});
