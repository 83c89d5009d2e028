import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';

let count = 0;
const fresh = () => openDatabase(`halfstop-${count++}`);
const book = (id: string, changed = '2026-03-02T14:02:00Z') => ({
  id,
  title: id,
  changed,
  size: 1,
});

describe('books kept in the browser', () => {
  it('come back as a snapshot and the lines since, in the order they were written', async () => {
    const store = await fresh();
    await store.begin(book('loft'), 'snapshot');
    await store.append(book('loft'), ['1', '2']);
    await store.append(
      book('loft'),
      Array.from({ length: 12 }, (_, index) => String(index + 3)),
    );
    expect(await store.read('loft')).toEqual({
      snapshot: 'snapshot',
      journal: Array.from({ length: 14 }, (_, index) => String(index + 1)),
    });
  });

  it('are listed with the last changed first', async () => {
    const store = await fresh();
    await store.begin(book('loft', '2026-03-01T10:00:00Z'), '');
    await store.begin(book('shed', '2026-03-02T10:00:00Z'), '');
    expect((await store.list()).map(({ id }) => id)).toEqual(['shed', 'loft']);
  });

  it('fold their first lines into a new snapshot and keep the others', async () => {
    const store = await fresh();
    await store.begin(book('loft'), 'old');
    await store.append(book('loft'), ['1', '2', '3']);
    await store.fold('loft', 'new', 2);
    await store.append(book('loft'), ['4']);
    expect(await store.read('loft')).toEqual({ snapshot: 'new', journal: ['3', '4'] });
  });

  it('do not mix their journals', async () => {
    const store = await fresh();
    await store.begin(book('a'), 'A');
    await store.begin(book('b'), 'B');
    await store.append(book('a'), ['of a']);
    expect(await store.read('b')).toEqual({ snapshot: 'B', journal: [] });
  });

  it('leave nothing behind when they are removed', async () => {
    const store = await fresh();
    await store.begin(book('loft'), 'snapshot');
    await store.append(book('loft'), ['1']);
    await store.remove('loft');
    expect(await store.read('loft')).toBeUndefined();
    expect(await store.list()).toEqual([]);
  });
});
