import 'fake-indexeddb/auto';
import { strFromU8, unzipSync, zipSync } from 'fflate';
import { expect, test } from 'vitest';
import { gather, merge } from '../../../src/app/archiving.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { readArchive, writeArchive } from '../../../src/files/archive.ts';
import { openDatabase } from '../../../src/storage/database.ts';
import { hashOf } from '../../../src/storage/packed.ts';
import { keepVersion } from '../../../src/storage/keepversion.ts';
import { stage } from '../book/stage.ts';

let count = 0;
const fresh = () => openDatabase(`archiving-${String(count++)}`);
const newId = () => `n${String(count++)}`;
const photo = new Uint8Array([1, 2, 3]);
const made = '2026-11-25T18:00:00.000Z';
const fileOf = (reading: string) => writeBook(stage({ Loft: { A1: reading } }).document);

async function filled() {
  const store = fresh();
  for (const [id, reading] of [
    ['loft', '12 lx'],
    ['shed', '34 lx'],
  ] as const) {
    const book = { id, title: `The ${id}`, changed: made, size: 1 };
    await store.begin(book, { snapshot: { text: fileOf(reading), remains: null }, journal: [] });
    const version = {
      book: id,
      id: `v-${id}`,
      kind: 'named',
      name: 'As rigged',
      at: made,
    } as const;
    await keepVersion(store.versions, { ...version, text: fileOf('1 lx') }, () => '');
  }
  await store.bin('shed', made);
  await store.photos.put('loft', await hashOf(photo), photo.buffer);
  await store.photos.put('loft', '0'.repeat(64), new Uint8Array([9]).buffer);
  return store;
}

async function archiveOf(store: Awaited<ReturnType<typeof filled>>) {
  const bytes = writeArchive((await gather(store, made)).archive);
  const read = readArchive(bytes);
  if (!read.ok) throw new Error(read.reason);
  return { bytes, archive: read.archive };
}

test('an archive gives every book back with its versions and photos, those in the bin too', async () => {
  const from = await filled();
  const { archive } = await archiveOf(from);
  const to = fresh();
  expect(await merge(to, archive, newId)).toEqual({ added: 2, beside: 0, same: 0 });
  expect(await to.list()).toMatchObject([
    { id: 'loft', title: 'The loft', changed: made },
    { id: 'shed', binned: made },
  ]);
  const kept = await to.photos.get('loft', await hashOf(photo));
  expect(kept && new Uint8Array(kept), 'the photo').toEqual(photo);
  expect(await to.photos.hashes('loft'), 'and none that is not its hash').toHaveLength(1);
  expect((await to.read('loft'))?.snapshot.text).toBe(fileOf('12 lx'));
  expect(await to.versions.list('shed')).toMatchObject([{ name: 'As rigged', kind: 'named' }]);
  expect(await to.versions.text('shed', 'v-shed')).toBe(fileOf('1 lx'));
});

test('the same store and time give the same bytes, and each book in it opens by itself', async () => {
  const store = await filled();
  const { bytes } = await archiveOf(store);
  expect((await archiveOf(store)).bytes).toEqual(bytes);
  const file = unzipSync(bytes)['books/The loft loft.halfstop'];
  expect(strFromU8(file ?? new Uint8Array())).toBe(fileOf('12 lx'));
});

test('taken in twice, nothing is doubled and nothing overwritten', async () => {
  const store = await filled();
  const { archive } = await archiveOf(store);
  expect(await merge(store, archive, newId)).toEqual({ added: 0, beside: 0, same: 2 });
  expect(await store.list()).toHaveLength(2);
});

test('a book that is here in another state stays; the archived one comes beside it', async () => {
  const store = await filled();
  const { archive } = await archiveOf(store);
  const changed = { snapshot: { text: fileOf('99 lx'), remains: null }, journal: [] };
  await store.begin({ id: 'loft', title: 'The loft', changed: made, size: 1 }, changed);
  expect(await merge(store, archive, () => 'other')).toEqual({ added: 0, beside: 1, same: 1 });
  expect((await store.read('loft'))?.snapshot.text).toBe(fileOf('99 lx'));
  const beside = (await store.read('other'))?.snapshot.text;
  expect(beside).toBe(fileOf('12 lx').replace('"Harbour Hours"', '"The loft, from the archive"'));
  expect(await store.versions.list('other')).toHaveLength(1);
});

test.each([
  ['no zip', new Uint8Array([1, 2, 3]), /not an archive/],
  ['a zip of something else', zipSync({ 'a.txt': new Uint8Array(3) }), /not an archive/],
])('%s is refused with a sentence', (_, bytes, words) => {
  expect(readArchive(bytes)).toMatchObject({ ok: false, reason: expect.stringMatching(words) });
});

test('an archive with a damaged book is refused whole', async () => {
  const { bytes } = await archiveOf(await filled());
  const files = unzipSync(bytes);
  files['books/The loft loft.halfstop'] = new Uint8Array([123]);
  expect(readArchive(zipSync(files))).toMatchObject({
    ok: false,
    reason: expect.stringMatching(/A book in the archive is damaged .*nothing was taken in/),
  });
});

test('a bomb is no archive: what it says of its own size is not believed', async () => {
  const { bytes } = await archiveOf(await filled());
  const files = unzipSync(bytes);
  const bomb = zipSync({ ...files, 'beside/loft photo': new Uint8Array(80_000_000) });
  const refused = {
    ok: false,
    reason: expect.stringMatching(/unpacks to far more .*nothing was taken in/),
  };
  expect(readArchive(bomb)).toMatchObject(refused);
  // The directory at its end says that nothing of it is larger than a byte.
  const lying = bomb.slice();
  const view = new DataView(lying.buffer);
  for (let at = 0; at + 28 < lying.length; at += 1)
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 1, true);
  expect(readArchive(lying)).toMatchObject(refused);
});
