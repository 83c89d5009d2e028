import 'fake-indexeddb/auto';
import { describe, expect, it, vi } from 'vitest';
import { openDatabase } from '../../../src/storage/database.ts';
import { StorageProblem } from '../../../src/storage/problems.ts';

let count = 0;
const fresh = () => openDatabase(`halfstop-${String(count++)}`);
const book = (id: string, changed = '2026-03-02T14:02:00Z') => ({
  id,
  title: id,
  changed,
  size: 1,
});
const pages = (text: string, ...journal: string[]) => ({
  snapshot: { text, remains: null },
  journal,
});

describe('books kept in the browser', () => {
  it('come back as a snapshot and the lines since, in the order they were written', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1'), 'tab');
    await store.append(book('loft'), ['2'], 'tab');
    await store.append(
      book('loft'),
      Array.from({ length: 12 }, (_, index) => String(index + 3)),
      'tab',
    );
    expect(await store.read('loft')).toEqual({
      ...pages('snapshot', ...Array.from({ length: 14 }, (_, index) => String(index + 1))),
      upTo: 0,
    });
  });

  it('are listed with the last changed first', async () => {
    const store = fresh();
    await store.begin(book('loft', '2026-03-01T10:00:00Z'), pages(''), 'tab');
    await store.begin(book('shed', '2026-03-02T10:00:00Z'), pages(''), 'tab');
    expect((await store.list()).map(({ id }) => id)).toEqual(['shed', 'loft']);
    await store.append(book('loft', '2026-03-03T10:00:00Z'), ['1'], 'tab');
    expect((await store.list()).map(({ id }) => id)).toEqual(['loft', 'shed']);
  });

  it('do not mix their journals', async () => {
    const store = fresh();
    await store.begin(book('a'), pages('A'), 'tab');
    await store.begin(book('b'), pages('B'), 'tab');
    await store.append(book('a'), ['of a'], 'tab');
    expect(await store.read('b')).toMatchObject(pages('B'));
  });

  it('leave nothing behind when they are removed', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1'), 'tab');
    await store.remove('loft');
    expect(await store.read('loft')).toBeUndefined();
    expect(await store.list()).toEqual([]);
  });

  it('are there again after the browser has closed the database', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot'), 'tab');
    store.close();
    await store.append(book('loft'), ['1'], 'tab');
    expect(await store.read('loft')).toMatchObject(pages('snapshot', '1'));
  });
});

describe('folding', () => {
  it('takes the first lines away and keeps the others and those that come', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1', '2', '3'), 'tab');
    expect(await store.fold('loft', 0, pages('new').snapshot, 2)).toBe(true);
    await store.append(book('loft'), ['4'], 'tab');
    expect(await store.read('loft')).toEqual({ ...pages('new', '3', '4'), upTo: 2 });
  });

  it('of all lines does not number the next one as if it were among them', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1', '2'), 'tab');
    await store.fold('loft', 0, pages('new').snapshot, 2);
    await store.append(book('loft'), ['3'], 'tab');
    expect(await store.fold('loft', 2, pages('newer').snapshot, 1)).toBe(true);
    expect(await store.read('loft')).toEqual({ ...pages('newer'), upTo: 3 });
  });

  it('does nothing when the snapshot is not the one that was read', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1', '2', '3'), 'tab');
    await store.fold('loft', 0, pages('new').snapshot, 1);
    expect(await store.fold('loft', 0, pages('late').snapshot, 2)).toBe(false);
    expect(await store.fold('loft', 1, pages('too far').snapshot, 3)).toBe(false);
    expect(await store.read('loft')).toEqual({ ...pages('new', '2', '3'), upTo: 1 });
  });

  it('does nothing for a book that was removed meanwhile', async () => {
    const store = fresh();
    expect(await store.fold('loft', 0, pages('new').snapshot, 1)).toBe(false);
    expect(await store.read('loft')).toBeUndefined();
  });
});

describe('one writer a book', () => {
  const kindOf = (work: Promise<unknown>) =>
    work.then(
      () => 'done',
      (cause: unknown) => (cause instanceof StorageProblem ? cause.kind : cause),
    );

  it('a tab that has not claimed the book cannot append to it', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1'), 'first tab');
    expect(await kindOf(store.append(book('loft'), ['2'], 'second tab'))).toBe('elsewhere');
    await store.claim('loft', 'second tab', false);
    expect(await kindOf(store.append(book('loft'), ['2'], 'first tab'))).toBe('elsewhere');
    expect(await kindOf(store.append(book('loft'), ['3'], 'second tab'))).toBe('done');
    expect(await store.read('loft')).toMatchObject(pages('snapshot', '1', '3'));
  });

  it('claiming takes a line away that was only half written, and no other', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1', '{"ki'), 'tab');
    await store.claim('loft', 'next', true);
    expect(await store.read('loft')).toMatchObject(pages('snapshot', '1'));
    await store.claim('loft', 'next', false);
    expect(await store.read('loft')).toMatchObject(pages('snapshot', '1'));
  });

  it('a book that is gone is said to be cleared, and nothing is written of it', async () => {
    const store = fresh();
    expect(await kindOf(store.append(book('loft'), ['1'], 'tab'))).toBe('cleared');
    expect(await kindOf(store.claim('loft', 'tab', false))).toBe('cleared');
    expect(await store.list()).toEqual([]);
  });
});

describe('what the browser refuses', () => {
  it.each([
    ['SecurityError', 'forbidden'],
    ['QuotaExceededError', 'full'],
    ['VersionError', 'newer'],
    ['UnknownError', 'failed'],
  ])('%s comes out as “%s”, and the next call tries again', async (name, kind) => {
    const store = fresh();
    const refusal = vi.spyOn(indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('no', name);
    });
    await expect(store.list()).rejects.toMatchObject({ kind });
    refusal.mockRestore();
    expect(await store.list()).toEqual([]);
  });
});
