import { describe, expect, test } from 'vitest';
import { catalogue } from '../../../functions/index.ts';
import { accept, stemAt, suggest } from '../../../src/panels/entry/suggest.ts';

const names = [
  { name: 'key_side', meaning: 'C11' },
  { name: 'Fill_side', meaning: 'C12' },
];
const offered = (stem: string) => suggest(stem, catalogue, names).map(({ name }) => name);

describe('what is being written at the caret', () => {
  test.each([
    ['=how far', 8, 'how far', 1],
    ['=2*inv', 6, 'inv', 3],
    ['=STOPS(key', 10, 'key', 7],
    ['=INVERSESQUARE(a, b)', 5, 'INVE', 1],
  ])('%s, caret at %i: %s', (text, caret, words, from) => {
    expect(stemAt(text, caret)).toEqual({ words, from });
  });

  test.each([
    ['f/2.8', 5, 'a reading is no formula'],
    ['="how far', 9, 'inside a text nothing is suggested'],
    ['=B12', 4, 'an address is being typed'],
    ['=', 1, 'nothing is written yet'],
    ['=STOPS(', 7, 'an argument has not begun'],
  ])('%s: %s', (text, caret) => {
    expect(stemAt(text, caret)).toBeUndefined();
  });
});

describe('suggestions', () => {
  test('people ask by trade words: "how far" offers DISTANCEFOR', () => {
    expect(offered('how far')).toContain('DISTANCEFOR');
  });

  test('the beginning of a name comes before any mention of the word', () => {
    expect(offered('inverse')[0]).toBe('INVERSESQUARE');
  });

  test('names of the book come first, without regard to case', () => {
    expect(offered('fill')[0]).toBe('Fill_side');
    expect(offered('KEY_')[0]).toBe('key_side');
  });

  test('never more than eight, and none for nonsense', () => {
    expect(offered('s').length).toBeLessThanOrEqual(8);
    expect(offered('qqqq')).toEqual([]);
  });
});

describe('a suggestion taken', () => {
  const stem = { words: 'how far', from: 1 };

  test('a function replaces its words and opens its arguments', () => {
    const taken = accept('=how far', 8, stem, {
      kind: 'function',
      name: 'DISTANCEFOR',
      summary: '',
    });
    expect(taken).toEqual({ text: '=DISTANCEFOR(', caret: 13 });
  });

  test('a bracket that is there already is not doubled', () => {
    const taken = accept(
      '=inv(800)',
      4,
      { words: 'inv', from: 1 },
      {
        kind: 'function',
        name: 'INVERSESQUARE',
        summary: '',
      },
    );
    expect(taken.text).toBe('=INVERSESQUARE(800)');
  });

  test('a name stands by itself', () => {
    const taken = accept(
      '=2*ke',
      5,
      { words: 'ke', from: 3 },
      {
        kind: 'name',
        name: 'key_side',
        summary: '',
      },
    );
    expect(taken.text).toBe('=2*key_side');
  });
});
