import { expect, test } from 'vitest';
import { startFrom } from '../../../src/app/address-book.ts';
import { fixturesOf } from '../../../src/book/fixtures.ts';
import { createBook } from '../../../src/book/book.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { planMeans } from '../../../templates/build.ts';
import { build } from '../../../templates/address-book/plan.ts';
import { shelve } from '../../../templates/shelve.ts';

const means = (prefix: string) => {
  let minted = 0;
  return { ...planMeans(), newId: () => `${prefix}${minted++}` };
};
const blank = () => createBook(newDocument(planMeans(), { title: 'Untitled book' }));
const names = (book: ReturnType<typeof blank>) =>
  book.document.sheets.map(({ properties }) => properties.name);

test('a new book begins with the sheet and with the fixtures of the shelf', () => {
  const own = build();
  shelve(own, means('own'), ['Tube 120', 'Fresnel 650 at flood']);
  const book = blank();
  expect(startFrom(book, own.document, means('new'))).toBe(2);
  expect(names(book).at(-1)).toBe('Address book');
  expect(fixturesOf(book.document).map(({ name }) => name)).toEqual(
    fixturesOf(own.document).map(({ name }) => name),
  );
});

test('a fixture that the book has already does not come twice', () => {
  const own = build();
  shelve(own, means('own'), ['Tube 120', 'Fresnel 650 at flood']);
  const book = blank();
  shelve(book, means('book'), ['Tube 120']);
  expect(startFrom(book, own.document, means('new'))).toBe(1);
  expect(fixturesOf(book.document)).toHaveLength(2);
});

test('a book of that title without fixtures or its sheet gives nothing', () => {
  const book = blank();
  expect(startFrom(book, blank().document, means('new'))).toBeUndefined();
  expect(names(book)).toHaveLength(1);
});
