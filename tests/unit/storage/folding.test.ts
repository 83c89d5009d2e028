import 'fake-indexeddb/auto';
import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import type { Book } from '../../../src/book/types.ts';
import { openDatabase } from '../../../src/storage/database.ts';
import { createFolding, foldBook, type FoldedAway } from '../../../src/storage/folding.ts';
import { readPages } from '../../../src/storage/pages.ts';
import { lengthOf, type BookStore, type KeptPages } from '../../../src/storage/store.ts';
import { stage } from '../book/stage.ts';
import { journalLine } from '../../../src/book/form/journal.ts';

const line = { id: 'loft', title: 'Loft', changed: '2026-03-02T14:02:00Z', size: 0 };

let count = 0;
/** A book in which 1,600 readings were typed one by one. */
async function keptWalk(readings = 1_600): Promise<{ store: BookStore; pages: KeptPages }> {
  const scene = stage();
  const snapshot = { text: writeBook(scene.document), remains: null };
  const journal: string[] = [];
  scene.book.listen((change) => journal.push(journalLine(change)));
  for (let reading = 1; reading <= readings; reading++)
    scene.type({ [`B${String((reading % 40) + 1)}`]: `${String(reading)} lx` });
  const store = openDatabase(`folding-${String(count++)}`);
  await store.begin(line, { snapshot, journal });
  return { store, pages: { snapshot, journal } };
}

function opened(pages: KeptPages | undefined): Book {
  const read = pages && readPages(pages);
  if (!read?.ok) throw new Error(read?.reason ?? 'Nothing is kept.');
  return read.book;
}

describe('folding a long journal', () => {
  it('leaves 1,000 gestures to undo, each to the same bytes as before', async () => {
    const { store, pages } = await keptWalk();
    const away = await foldBook(store, 'loft');
    expect(away).toEqual({ lines: 600, characters: lengthOf(pages.journal.slice(0, 600)) });

    const [before, after] = [opened(pages), opened(await store.read('loft'))];
    let undone = 0;
    do {
      if (undone % 50 === 0 || undone === 1_000)
        expect(writeBook(after.document), `${String(undone)} undone`).toBe(
          writeBook(before.document),
        );
      before.undo();
      undone++;
    } while (after.undo());
    expect(undone - 1).toBe(1_000);
  });

  it('loses no line that is written while it folds', async () => {
    const { store, pages } = await keptWalk();
    const folding = foldBook(store, 'loft');
    await store.append(line, [pages.journal[1_599] ?? '', 'while it folds'], 1_600);
    await folding;
    await store.append(line, ['after'], 1_602);
    const kept = await store.read('loft');
    expect(kept?.journal.slice(-3)).toEqual([pages.journal[1_599], 'while it folds', 'after']);
    expect(kept?.journal.length).toBe(1_003);
  });

  it('leaves all as it was when the store refuses', async () => {
    const { store, pages } = await keptWalk(1_100);
    const full: BookStore = { ...store, fold: () => Promise.reject(new Error('full')) };
    await expect(foldBook(full, 'loft')).rejects.toThrow('full');
    expect(await store.read('loft')).toMatchObject(pages);
  });

  it('does nothing for a book that is not there', async () => {
    expect(await foldBook(openDatabase('folding-none'), 'loft')).toBeUndefined();
  });
});

describe('when a journal is folded', () => {
  function bench(lines: number, characters: number) {
    const asked: ((away: FoldedAway | undefined) => void)[] = [];
    const folding = createFolding(
      lines,
      characters,
      () => new Promise((resolve) => asked.push(resolve)),
    );
    const answer = async (away?: FoldedAway) => {
      asked.at(-1)?.(away);
      await new Promise((done) => setTimeout(done, 0));
    };
    return { folding, asked, answer };
  }

  it('after 1,500 lines, or 8 million characters', () => {
    const short = bench(1_000, 1_000);
    short.folding.grew(500, 7_000_000);
    expect(short.asked).toHaveLength(0);
    short.folding.grew(1, 1);
    expect(short.asked).toHaveLength(1);
    expect(bench(20, 9_000_000).asked).toHaveLength(1);
    expect(bench(2_000, 10).asked, 'one that is long when it is opened').toHaveLength(1);
  });

  it('once at a time, and again when it is long again', async () => {
    const { folding, asked, answer } = bench(1_501, 1);
    folding.grew(400, 1);
    expect(asked).toHaveLength(1);
    await answer({ lines: 800, characters: 0 });
    folding.grew(300, 1);
    expect(asked).toHaveLength(1);
    folding.grew(100, 1);
    expect(asked).toHaveLength(2);
  });

  it('where nothing could be folded, not again with every line', async () => {
    const { folding, asked, answer } = bench(1_501, 1);
    await answer(undefined);
    folding.grew(200, 1);
    expect(asked).toHaveLength(1);
    folding.grew(100, 1);
    expect(asked).toHaveLength(2);
  });
});
