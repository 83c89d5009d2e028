import type { BookStore } from './store.ts';

/** What outlasts the books: a browser short of room clears databases and leaves this. */
export type Memory = Pick<Storage, 'getItem' | 'setItem'>;

/** A store that knows which books it had, so that those the browser cleared are missed. */
export interface RememberingStore extends BookStore {
  /** Titles of books that lay here and are gone though nobody removed them. */
  missing(): Promise<readonly string[]>;
  /** Misses them no longer. */
  forgetMissing(): Promise<void>;
}

type Titles = Readonly<Record<string, string>>;

const key = 'halfstop-books';

/**
 * Other tabs share the memory: they write down a book after it is kept, and strike it out before it
 * is removed. So a book is missing only if it is written down both before and after the store is
 * asked and the store does not have it.
 */
export function remembering(store: BookStore, memory: Memory | undefined): RememberingStore {
  /** As this page knows it, for the case that the memory was cleared too. */
  let known: Titles = {};
  const titles = (): Titles => (known = read(memory) ?? known);
  const change = (turn: (before: Titles) => Titles): void => {
    const before = JSON.stringify(titles());
    known = turn(known);
    if (JSON.stringify(known) !== before) write(memory, known);
  };
  const note = (books: readonly { readonly id: string; readonly title: string }[]) =>
    change((before) => ({
      ...before,
      ...Object.fromEntries(books.map(({ id, title }) => [id, title])),
    }));
  const strike = (ids: readonly string[]) =>
    change((before) =>
      Object.fromEntries(Object.entries(before).filter(([id]) => !ids.includes(id))),
    );
  const gone = async (): Promise<readonly (readonly [id: string, title: string])[]> => {
    const before = titles();
    const here = new Set((await store.list()).map(({ id }) => id));
    const after = titles();
    return Object.entries(after).filter(([id]) => id in before && !here.has(id));
  };

  return {
    ...store,
    async list() {
      const books = await store.list();
      note(books);
      return books;
    },
    async begin(book, pages) {
      await store.begin(book, pages);
      note([book]);
    },
    async settle(book) {
      await store.settle(book);
      note([book]);
    },
    remove(id) {
      strike([id]);
      return store.remove(id);
    },
    missing: async () => (await gone()).map(([, title]) => title),
    forgetMissing: async () => strike((await gone()).map(([id]) => id)),
  };
}

function read(memory: Memory | undefined): Titles | undefined {
  try {
    const found: unknown = JSON.parse(memory?.getItem(key) ?? 'null');
    if (typeof found !== 'object' || found === null) return undefined;
    const entries = Object.entries(found).filter(([, title]) => typeof title === 'string');
    return Object.fromEntries(entries) as Titles;
  } catch {
    return undefined;
  }
}

function write(memory: Memory | undefined, titles: Titles): void {
  try {
    memory?.setItem(key, JSON.stringify(titles));
  } catch {
    // Without it, what is cleared while no page is open is not missed.
  }
}
