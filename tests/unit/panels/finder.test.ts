import { expect, test } from 'vitest';
import { search, type Found } from '../../../src/panels/finder/search.ts';

const thing = (kind: Found['kind'], label: string, words: string[] = [], unavailable?: string) => ({
  kind,
  label,
  words,
  aside: '',
  go: () => undefined,
  ...(unavailable !== undefined && { unavailable }),
});

const things = [
  thing('command', 'Insert rows above', ['add']),
  thing('command', 'Undo: Type in Key side', ['take back']),
  thing('command', 'Delete rows', ['remove'], 'Nothing is selected.'),
  thing('sheet', 'Sail loft', ['plan']),
  thing('function', 'INVERSESQUARE', ['move the lamp', 'further away']),
];
const labels = (text: string) => search(text, things).map(({ label }) => label);

test('with nothing typed, everything but the functions is listed', () => {
  expect(labels('')).toEqual([
    'Insert rows above',
    'Undo: Type in Key side',
    'Delete rows',
    'Sail loft',
  ]);
});

test('beginnings of words in any order find it', () => {
  expect(labels('ab ins')).toEqual(['Insert rows above']);
});

test('it is found by words for what it is for', () => {
  expect(labels('take back')).toEqual(['Undo: Type in Key side']);
  expect(labels('move lamp')).toEqual(['INVERSESQUARE']);
});

test('what cannot run now comes after what can', () => {
  expect(labels('rows')).toEqual(['Insert rows above', 'Delete rows']);
});

test('every word has to be there', () => {
  expect(labels('rows above nowhere')).toEqual([]);
});
