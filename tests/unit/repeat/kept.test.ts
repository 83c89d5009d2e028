import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { gather, merge } from '../../../src/app/archiving.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { readRecord, writeRecord } from '../../../src/book/form/recordfile.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { become } from '../../../src/book/make/become.ts';
import { addRecord } from '../../../src/book/make/records.ts';
import { recordsOf } from '../../../src/book/records.ts';
import { valuesFor } from '../../../src/engine/index.ts';
import { readArchive, writeArchive } from '../../../src/files/archive.ts';
import { readTable } from '../../../src/files/table.ts';
import { filesOf } from '../../../src/files/out/forms.ts';
import { makeSheet } from '../../../src/repeat/sheet/make.ts';
import { reportSheet } from '../../../src/repeat/sheet/report.ts';
import { openDatabase } from '../../../src/storage/database.ts';
import { hashOf } from '../../../src/storage/packed.ts';
import { run } from '../../../templates/build.ts';
import { harbour } from './place.ts';

const bytes = new Uint8Array([0xff, 0xd8, 0xff, 0xe0, 1, 2]);

/** A book with a record of the loft that has a photo which stands on no cell. */
async function recorded() {
  const place = harbour();
  const photo = { hash: await hashOf(bytes), name: 'loft', size: bytes.length };
  const made = place.record('Sail loft');
  const points = made.points.map((point, at) => (at === 0 ? { ...point, photos: [photo] } : point));
  const before = writeBook(place.document);
  run(place.book, addRecord(place.document, place.means, { ...made, points }));
  return { ...place, photo, before, records: () => recordsOf(place.document) };
}

const reread = (text: string) => {
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  return read.document;
};

describe('records are kept with the book', () => {
  it('in a copy of it, whole', async () => {
    const { document, records } = await recorded();
    expect(recordsOf(reread(writeBook(document)))).toEqual(records());
  });

  it('in its versions: one from before has none, and undo of going back brings it again', async () => {
    const { book, document, before, records } = await recorded();
    const now = records();
    const later = writeBook(document);
    run(book, become(document, reread(before), 'Restore'));
    expect(records()).toEqual([]);
    run(book, become(document, reread(later), 'Restore'));
    expect(records()).toEqual(now);
    book.undo();
    book.undo();
    expect(records()).toEqual(now);
  });

  it('in the archive, with the photo that only the record names', async () => {
    const { document, photo, records } = await recorded();
    const from = openDatabase('records-from');
    const made = '2026-11-25T18:00:00.000Z';
    const kept = { id: 'loft', title: 'The loft', changed: made, size: 1 };
    const snapshot = { text: writeBook(document), remains: null };
    await from.begin(kept, { snapshot, journal: [] });
    await from.photos.put('loft', photo.hash, bytes.buffer);
    const read = readArchive(writeArchive((await gather(from, made)).archive));
    if (!read.ok) throw new Error(read.reason);
    const to = openDatabase('records-to');
    await merge(to, read.archive, () => 'another');
    const text = (await to.read('loft'))?.snapshot.text ?? '';
    expect(recordsOf(reread(text))).toEqual(records());
    const picture = await to.photos.get('loft', photo.hash);
    expect(picture && new Uint8Array(picture)).toEqual(bytes);
  });

  it('and go to another book by file, with their pictures', async () => {
    const { photo, records } = await recorded();
    const [one] = records();
    if (!one) throw new Error('no record');
    const picture = { hash: photo.hash, jpeg: Buffer.from(bytes).toString('base64') };
    const read = readRecord(writeRecord(one, [picture]));
    if (!read.ok) throw new Error(read.reason);
    expect(read.photos).toEqual([picture]);
    const other = harbour();
    run(other.book, addRecord(other.document, other.means, read.record));
    expect(recordsOf(other.document)[0]).toEqual({ ...one, id: expect.any(String) as string });
  });
});

describe('a match report goes out', () => {
  const place = harbour();
  const loft = place.record('Sail loft', { by: 'Ines' });
  run(place.book, makeSheet(place.document, place.means, reportSheet(loft, loft), 'Report'));
  const out = (form: 'csv' | 'xlsx' | 'ods') =>
    filesOf(place.document, valuesFor(place.document, place.engine), form, { formulas: 'live' });

  it('as a table with its sentence, each verdict and who signs it where and when', async () => {
    const files = await out('csv');
    const file = files.find((one) => 'sheet' in one && one.sheet === 'Match Sail loft');
    const rows = readTable(String(file?.content))?.rows ?? [];
    const row = (label: string) => rows.find(([first]) => first === label) ?? [];
    expect(rows[0]?.[0]).toMatch(/^The light matches: 0 of 6 points/);
    expect(row('Key side of face')).toContain('cannot be told apart');
    expect(row('Reference').join()).toContain('Sail loft, first floor');
    expect(row('By')).toContain('Ines');
  });

  it.each(['xlsx', 'ods'] as const)('as %s, whole', async (form) => {
    const [file] = await out(form);
    expect(file?.content.length).toBeGreaterThan(4000);
  });
});
