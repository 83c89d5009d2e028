import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { startFrom } from '../../../src/app/address-book.ts';
import { gather, merge } from '../../../src/app/archiving.ts';
import { fixturesOf } from '../../../src/book/fixtures.ts';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import { readArchive, writeArchive } from '../../../src/files/archive.ts';
import { openDatabase } from '../../../src/storage/database.ts';
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

test('out with the archive and back in on another device, new books begin with it there', async () => {
  const own = build();
  shelve(own, means('own'), ['Tube 120', 'Fresnel 650 at flood']);
  const [here, there] = [openDatabase('address-here'), openDatabase('address-there')];
  const at = '2026-11-29T05:00:00.000Z';
  const snapshot = { text: writeBook(own.document), remains: null };
  await here.begin(
    { id: 'ours', title: 'Address book', changed: at, size: 1 },
    { snapshot, journal: [] },
  );
  const carried = readArchive(writeArchive((await gather(here, at)).archive));
  if (!carried.ok) throw new Error(carried.reason);
  expect(await merge(there, carried.archive, means('merged').newId)).toMatchObject({ added: 1 });
  const [found] = await there.list();
  expect(found?.title).toBe('Address book');
  const read = readBook((await there.read(found?.id ?? ''))?.snapshot.text ?? '');
  if (!read.ok) throw new Error(read.reason);
  const book = blank();
  expect(startFrom(book, read.document, means('new'))).toBe(2);
  expect(names(book).at(-1)).toBe('Address book');
});
