import { problem } from './problems.ts';
import { lengthOf, sizeOf, type BookStore, type KeptPages } from './store.ts';
import { type KeptBook } from './kept.ts';

export interface KeeperMeans {
  readonly store: BookStore;
  /** The pages as they were begun or read. They are held on to, in case the store loses them. */
  readonly pages: KeptPages;
  readonly from: Beginning;
  /** The book's line in the list of kept books, as of now. */
  readonly describe: (size: number) => KeptBook;
}

/** A book that the store does not have yet, or where reading it ended. */
export type Beginning = 'new' | { readonly last: number; readonly cutShort: boolean };

export interface Keeper {
  /** Keeps these lines after all before them. */
  write(lines: readonly string[]): Promise<void>;
  /** Waits until all of it lies on the disk itself; resolves to when, in ISO 8601. */
  settle(): Promise<string>;
  /** Makes this tab the one that writes; `write` does so by itself. */
  claim(): Promise<void>;
  /** So many characters of the journal have been folded away. */
  folded(characters: number): void;
}

/**
 * Writes the lines of one book. Should the store have lost the book, the next write keeps it whole,
 * with all that can be undone.
 */
export function createKeeper({ store, pages, from, describe }: KeeperMeans): Keeper {
  const cutShort = from !== 'new' && from.cutShort;
  const journal = pages.journal.slice(0, cutShort ? -1 : undefined);
  let last = from === 'new' ? 0 : from.last;
  let toDo: 'begin' | 'claim' | undefined = from === 'new' ? 'begin' : 'claim';
  let size = sizeOf({ ...pages, journal });

  const heed = (cause: unknown): never => {
    const found = problem(cause);
    if (found.kind === 'cleared') toDo = 'begin';
    throw found;
  };
  const claim = async (): Promise<void> => {
    if (toDo !== 'claim') return;
    await store.claim(describe(size).id, last, cutShort).catch(heed);
    last += 1;
    toDo = undefined;
  };

  return {
    claim,
    async write(lines) {
      const book = describe(size + lengthOf(lines));
      if (toDo === 'begin') {
        const whole = [...journal, ...lines];
        await store.begin(book, { snapshot: pages.snapshot, journal: whole });
        last = whole.length;
        toDo = undefined;
      } else {
        await claim();
        await store.append(book, lines, last).catch(heed);
        last += lines.length;
      }
      for (const line of lines) journal.push(line);
      size += lengthOf(lines);
    },
    async settle() {
      const book = describe(size);
      await store.settle(book).catch(heed);
      return book.changed;
    },
    folded(characters) {
      size -= characters;
    },
  };
}
