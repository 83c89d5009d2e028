import { problem } from './problems.ts';
import { lengthOf, sizeOf, type BookStore, type KeptBook, type KeptPages } from './store.ts';

export interface KeeperMeans {
  readonly store: BookStore;
  /** The pages as they were begun or read. They are held on to, in case the store loses them. */
  readonly pages: KeptPages;
  /** This tab. */
  readonly writer: string;
  /** The book's line in the list of kept books, as of now. */
  readonly describe: (size: number) => KeptBook;
  /** What is to be done before the first line can follow the pages. */
  readonly first: 'begin' | 'claim' | 'claim, the last line being cut short';
}

export interface Keeper {
  /** Keeps these lines after all before them; resolves to when. */
  write(lines: readonly string[]): Promise<string>;
  /** Makes this tab the one that writes; `write` does so by itself. */
  claim(): Promise<void>;
}

/**
 * Writes the lines of one book. Should the store have lost the book, the next write keeps it whole,
 * with all that can be undone.
 */
export function createKeeper({ store, pages, writer, describe, first }: KeeperMeans): Keeper {
  const journal = [...pages.journal];
  const cutShort = first === 'claim, the last line being cut short';
  if (cutShort) journal.pop();
  let toDo: 'begin' | 'claim' | undefined = first === 'begin' ? 'begin' : 'claim';
  let size = sizeOf({ ...pages, journal });

  const heed = (cause: unknown): never => {
    const found = problem(cause);
    if (found.kind === 'cleared') toDo = 'begin';
    throw found;
  };
  const claim = async (): Promise<void> => {
    if (toDo !== 'claim') return;
    await store.claim(describe(size).id, writer, cutShort).catch(heed);
    toDo = undefined;
  };

  return {
    claim,
    async write(lines) {
      const grown = size + lengthOf(lines);
      const book = describe(grown);
      if (toDo === 'begin') {
        const whole = { snapshot: pages.snapshot, journal: [...journal, ...lines] };
        await store.begin(book, whole, writer);
        toDo = undefined;
      } else {
        await claim();
        await store.append(book, lines, writer).catch(heed);
      }
      for (const line of lines) journal.push(line);
      size = grown;
      return book.changed;
    },
  };
}
