import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';

let count = 0;
const fresh = () => openDatabase(`halfstop-photos-${String(count++)}`);
const book = { id: 'loft', title: 'Loft', changed: '2026-03-02T14:02:00Z', size: 1 };
const hashes = ['a', 'b', 'c', 'd', 'e'].map((letter) => letter.repeat(64)) as [
  string,
  string,
  string,
  string,
  string,
];
const bytes = (...values: number[]) => new Uint8Array(values).buffer;

describe('photos beside a book', () => {
  it('come back byte by byte, each under its own book', async () => {
    const store = fresh();
    await store.photos.put('loft', hashes[0], bytes(1, 2, 3));
    const back = await store.photos.get('loft', hashes[0]);
    expect(Array.from(new Uint8Array(back ?? bytes()))).toEqual([1, 2, 3]);
    expect(await store.photos.get('shed', hashes[0])).toBeUndefined();
  });

  it('stay while the whole, a journal line or a version names them, and go when nothing does', async () => {
    const store = fresh();
    const [inWhole, inRemains, inJournal, inVersion, nowhere] = hashes;
    const snapshot = { text: `{"hash":"${inWhole}"}`, remains: `{"hash":"${inRemains}"}` };
    await store.begin(book, { snapshot, journal: [`{"hash":"${inJournal}"}`, '{"kind":"undo"}'] });
    const at = '2026-03-02T14:02:00Z';
    await store.versions.put(
      {
        ...{ book: 'loft', id: 'v1', at, kind: 'named', name: 'Before the move' },
        ...{ size: 1, hash: '', changes: '', since: null },
      },
      `{"hash":"${inVersion}"}`,
    );
    for (const hash of hashes) await store.photos.put('loft', hash, bytes(1));
    await store.photos.put('shed', nowhere, bytes(1));
    await store.photos.sweep('loft');
    const there = await Promise.all(hashes.map((hash) => store.photos.get('loft', hash)));
    expect(there.map((one) => one !== undefined)).toEqual([true, true, true, true, false]);
    expect(await store.photos.get('shed', nowhere)).toBeDefined();
  });

  it('are not touched where the book itself cannot be read', async () => {
    const store = fresh();
    await store.photos.put('loft', hashes[0], bytes(1));
    await store.photos.sweep('loft');
    expect(await store.photos.get('loft', hashes[0])).toBeDefined();
  });

  it('go with their book', async () => {
    const store = fresh();
    await store.begin(book, { snapshot: { text: '', remains: null }, journal: [] });
    await store.photos.put('loft', hashes[0], bytes(1));
    await store.remove('loft');
    expect(await store.photos.get('loft', hashes[0])).toBeUndefined();
  });
});
