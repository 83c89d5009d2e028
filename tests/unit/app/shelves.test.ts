import 'fake-indexeddb/auto';
import { expect, test } from 'vitest';
import { gather, merge } from '../../../src/app/archiving.ts';
import { changesInShort, compare } from '../../../src/app/comparison.ts';
import { createBook } from '../../../src/book/book.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { addRecord } from '../../../src/book/make/records.ts';
import { recordsOf } from '../../../src/book/records.ts';
import { spectraOf } from '../../../src/book/spectra.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { readArchive, writeArchive } from '../../../src/files/archive.ts';
import { sampleSpectra } from '../../../src/files/spectra/samples.ts';
import { spectraIn } from '../../../src/files/spectra/shelf.ts';
import { openDatabase } from '../../../src/storage/database.ts';
import { keepVersion } from '../../../src/storage/keepversion.ts';
import { run } from '../../../templates/build.ts';
import { shelveSpectra } from '../../../templates/shelve.ts';
import { harbour } from '../repeat/place.ts';

const made = '2026-11-29T01:00:00.000Z';

/** The loft without and with a record of itself and the sample spectra. */
function loft() {
  const { book, document, means, record } = harbour();
  const bare = writeBook(document);
  run(book, addRecord(document, means, record('Sail loft', { note: 'as rigged' })));
  shelveSpectra(book, means);
  return { bare, full: writeBook(document) };
}

const { bare, full } = loft();

async function keeping(store: ReturnType<typeof openDatabase>, id: string, text: string) {
  const book = { id, title: 'Harbour Hours', changed: made, size: 1 };
  await store.begin(book, { snapshot: { text, remains: null }, journal: [] });
}

/** What a text of a book still knows, read as it would be opened. */
function known(text: string | undefined) {
  const read = readBook(text ?? '');
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  const engine = connectEngine(book, { spectra: spectraIn });
  return {
    spectra: spectraOf(book.document),
    records: recordsOf(book.document),
    ra: Number(engine.evaluate('SPECTRUMCRI("Daylight 6200")').value),
  };
}

test('spectra and records go through an archive, into a version and into the copy beside another state', async () => {
  const before = known(full);
  expect(before.spectra).toHaveLength(sampleSpectra.length);
  expect(before.records).toMatchObject([{ name: 'Sail loft', note: 'as rigged' }]);
  // The daylight of CIE 15 is its own reference.
  expect(before.ra).toBeGreaterThan(99.5);

  const store = openDatabase('shelves');
  await keeping(store, 'loft', full);
  const version = { book: 'loft', id: 'v', kind: 'named', name: 'Full', at: made } as const;
  await keepVersion(store.versions, { ...version, text: full }, () => '');
  const read = readArchive(writeArchive((await gather(store, made)).archive));
  if (!read.ok) throw new Error(read.reason);

  const elsewhere = openDatabase('shelves-elsewhere');
  await keeping(elsewhere, 'loft', bare);
  expect(await merge(elsewhere, read.archive, () => 'copy')).toMatchObject({ beside: 1 });
  expect(known((await elsewhere.read('loft'))?.snapshot.text).spectra).toEqual([]);
  expect(known((await elsewhere.read('copy'))?.snapshot.text)).toEqual(before);
  expect(known(await elsewhere.versions.text('copy', 'v'))).toEqual(before);
});

test('two versions are told apart by what lies on the shelves', () => {
  expect(changesInShort(bare, full)).toBe('spectra, records');
  expect(changesInShort(full, full)).toBe('Nothing changed');
  expect(compare(bare, full)).toMatchObject({
    book: [
      { what: 'Spectra', before: '0', after: '7, 7 changed' },
      { what: 'Records', before: '0', after: '1, 1 changed' },
    ],
  });
});
