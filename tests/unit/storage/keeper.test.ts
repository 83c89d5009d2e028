import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';
import { createKeeper, type KeeperMeans } from '../../../src/storage/keeper.ts';
import { sizeOf, type BookStore } from '../../../src/storage/store.ts';

let count = 0;
const fresh = () => openDatabase(`keeper-${String(count++)}`);
const snapshot = { text: 'snapshot', remains: null };

function keeper(store: BookStore, from: KeeperMeans['from'], journal: string[] = []) {
  return createKeeper({
    store,
    pages: { snapshot, journal },
    describe: (size) => ({ id: 'loft', title: 'Loft', changed: '2026-03-02T14:02:00Z', size }),
    from,
  });
}

const journalOf = async (store: BookStore) => (await store.read('loft'))?.journal;

describe('keeping one book', () => {
  it('begins with the pages and goes on with lines', async () => {
    const store = fresh();
    const kept = keeper(store, 'new');
    await kept.write([]);
    await kept.write(['1']);
    await kept.write(['2', '3']);
    expect(await store.read('loft')).toMatchObject({ snapshot, journal: ['1', '2', '3'] });
  });

  it('goes on where an earlier tab left off, which then writes no more', async () => {
    const store = fresh();
    const before = keeper(store, 'new');
    await before.write(['1']);
    await keeper(store, { last: 1, cutShort: false }, ['1']).write(['2']);
    await expect(before.write(['3'])).rejects.toMatchObject({ kind: 'elsewhere' });
    expect(await journalOf(store)).toEqual(['1', '2']);
  });

  it('says that the book was cleared, then keeps it again with all that can be undone', async () => {
    const store = fresh();
    const kept = keeper(store, 'new');
    await kept.write(['1']);
    await kept.write(['2']);
    await store.remove('loft');
    await expect(kept.write(['3'])).rejects.toMatchObject({ kind: 'cleared' });
    await kept.write(['3', '4']);
    expect(await store.read('loft')).toMatchObject({ snapshot, journal: ['1', '2', '3', '4'] });
    await kept.write(['5']);
    expect(await journalOf(store)).toEqual(['1', '2', '3', '4', '5']);
  });

  it('does the same for a book cleared between its reading and its first line', async () => {
    const store = fresh();
    const kept = keeper(store, { last: 1, cutShort: false }, ['1']);
    await expect(kept.claim()).rejects.toMatchObject({ kind: 'cleared' });
    await kept.write(['2']);
    expect(await journalOf(store)).toEqual(['1', '2']);
  });

  it('a half written line is in nothing that is kept later', async () => {
    const store = fresh();
    await keeper(store, 'new').write(['1', '{"ki']);
    const kept = keeper(store, { last: 2, cutShort: true }, ['1', '{"ki']);
    await kept.write(['2']);
    expect(await journalOf(store)).toEqual(['1', '2']);
    await store.remove('loft');
    await kept.write(['3']).catch(() => undefined);
    await kept.write(['3']);
    expect(await journalOf(store)).toEqual(['1', '2', '3']);
  });

  it('says so when the book was cleared between writing and settling, and keeps it again', async () => {
    const store = fresh();
    const kept = keeper(store, 'new');
    await kept.write(['1']);
    expect(await kept.settle()).toBe('2026-03-02T14:02:00Z');
    await store.remove('loft');
    await expect(kept.settle()).rejects.toMatchObject({ kind: 'cleared' });
    expect(await store.list()).toEqual([]);
    await kept.write([]);
    expect(await journalOf(store)).toEqual(['1']);
  });

  it('the list says how large a book is', async () => {
    const store = fresh();
    const kept = keeper(store, 'new', ['1']);
    await kept.write([]);
    await kept.write(['22', '333']);
    const pages = await store.read('loft');
    expect((await store.list())[0]?.size).toBe(pages && sizeOf(pages));
    expect((await store.list())[0]?.size).toBe('snapshot'.length + 6);
    kept.folded(3);
    await kept.write(['4']);
    expect((await store.list())[0]?.size).toBe('snapshot'.length + 4);
  });
});
