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

const lines = (from: number, to: number) =>
  Array.from({ length: to - from + 1 }, (_, index) => String(from + index));

describe('books kept in the browser', () => {
  it('come back as a snapshot and the lines since, in the order they were written', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1'));
    await store.append(book('loft'), ['2'], 1);
    await store.append(book('loft'), lines(3, 14), 2);
    expect(await store.read('loft')).toEqual({
      ...pages('snapshot', ...lines(1, 14)),
      numbers: lines(1, 14).map(Number),
      upTo: 0,
      last: 14,
    });
  });

  it('are listed with the last changed first', async () => {
    const store = fresh();
    await store.begin(book('loft', '2026-03-01T10:00:00Z'), pages(''));
    await store.begin(book('shed', '2026-03-02T10:00:00Z'), pages(''));
    expect((await store.list()).map(({ id }) => id)).toEqual(['shed', 'loft']);
    await store.append(book('loft', '2026-03-03T10:00:00Z'), ['1'], 0);
    expect((await store.list()).map(({ id }) => id)).toEqual(['loft', 'shed']);
  });

  it('do not mix their journals', async () => {
    const store = fresh();
    await store.begin(book('a'), pages('A'));
    await store.begin(book('b'), pages('B'));
    await store.append(book('a'), ['of a'], 0);
    expect(await store.read('b')).toMatchObject(pages('B'));
  });

  it('leave nothing behind when they are removed', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1'));
    await store.remove('loft');
    expect(await store.read('loft')).toBeUndefined();
    expect(await store.list()).toEqual([]);
  });

  it('are there again after the browser has closed the database', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot'));
    store.close();
    await store.append(book('loft'), ['1'], 0);
    expect(await store.read('loft')).toMatchObject(pages('snapshot', '1'));
  });
});

describe('folding', () => {
  it('takes the first lines away and keeps the others and those that come', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1', '2', '3'));
    expect(await store.fold('loft', 0, pages('new').snapshot, 2)).toBe(true);
    await store.append(book('loft'), ['4'], 3);
    expect(await store.read('loft')).toEqual({
      ...pages('new', '3', '4'),
      numbers: [3, 4],
      upTo: 2,
      last: 4,
    });
  });

  it('of all lines leaves their numbers taken', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1', '2'));
    await store.fold('loft', 0, pages('new').snapshot, 2);
    expect(await store.read('loft')).toMatchObject({ ...pages('new'), upTo: 2, last: 2 });
  });

  it('does nothing when the snapshot is not the one that was read', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1', '2', '3'));
    await store.fold('loft', 0, pages('new').snapshot, 1);
    expect(await store.fold('loft', 0, pages('late').snapshot, 2)).toBe(false);
    expect(await store.read('loft')).toMatchObject({ ...pages('new', '2', '3'), upTo: 1 });
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

  it('a tab that read the book before another claimed it cannot append to it', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1'));
    await store.claim('loft', 1, false);
    expect(await kindOf(store.append(book('loft', 'later'), ['2', '3'], 1))).toBe('elsewhere');
    expect(await kindOf(store.claim('loft', 1, false))).toBe('elsewhere');
    expect(await kindOf(store.append(book('loft'), ['4'], 2))).toBe('done');
    expect(await store.read('loft')).toMatchObject({
      ...pages('snapshot', '1', '4'),
      numbers: [1, 3],
      last: 3,
    });
    expect((await store.list())[0]?.changed, 'nothing of what was refused').toBe(
      book('loft').changed,
    );
  });

  it('claiming takes a line away that was only half written, and no other', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('snapshot', '1', '{"ki'));
    await store.claim('loft', 2, true);
    expect(await store.read('loft')).toMatchObject({ ...pages('snapshot', '1'), last: 3 });
    await store.claim('loft', 3, false);
    expect(await store.read('loft')).toMatchObject({ ...pages('snapshot', '1'), last: 4 });
  });

  it('a claim between lines does not keep the first of them from being folded', async () => {
    const store = fresh();
    await store.begin(book('loft'), pages('old', '1'));
    await store.claim('loft', 1, false);
    await store.append(book('loft'), ['2', '3'], 2);
    expect(await store.fold('loft', 0, pages('new').snapshot, 3)).toBe(true);
    expect(await store.read('loft')).toMatchObject({ ...pages('new', '3'), upTo: 3, last: 4 });
  });

  it('a book that is gone is said to be cleared', async () => {
    const store = fresh();
    expect(await kindOf(store.append(book('loft'), ['1'], 0))).toBe('cleared');
    expect(await kindOf(store.claim('shed', 0, false))).toBe('cleared');
    expect(await store.read('loft')).toBeUndefined();
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
