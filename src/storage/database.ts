import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { problem, type BookStore, type KeptBook } from './store.ts';

interface Schema extends DBSchema {
  books: { key: string; value: KeptBook };
  snapshots: { key: string; value: string };
  /** Key: book id and a number that only grows, so that lines sort in the order they were written. */
  journal: { key: [string, number]; value: string };
}

const all = ['books', 'snapshots', 'journal'] as const;

const linesOf = (id: string): IDBKeyRange =>
  IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

function open(name: string): Promise<IDBPDatabase<Schema>> {
  return openDB<Schema>(name, 1, {
    upgrade(database) {
      database.createObjectStore('books', { keyPath: 'id' });
      database.createObjectStore('snapshots');
      database.createObjectStore('journal');
    },
  });
}

/** Books kept in IndexedDB. Text, not objects: ten times faster to write and read. */
export async function openDatabase(name = 'halfstop'): Promise<BookStore> {
  const database = await open(name).catch((cause: unknown) => {
    throw problem(cause);
  });
  return {
    list: guarded(async () => {
      const books = await database.getAll('books');
      return books.sort((a, b) => b.changed.localeCompare(a.changed, 'en'));
    }),
    read: guarded(async (id: string) => {
      const transaction = database.transaction(all, 'readonly');
      const snapshot = await transaction.objectStore('snapshots').get(id);
      const journal = await transaction.objectStore('journal').getAll(linesOf(id));
      return snapshot === undefined ? undefined : { snapshot, journal };
    }),
    begin: guarded(async (book: KeptBook, snapshot: string) => {
      const transaction = database.transaction(all, 'readwrite', { durability: 'strict' });
      await Promise.all([
        transaction.objectStore('books').put(book),
        transaction.objectStore('snapshots').put(snapshot, book.id),
        transaction.objectStore('journal').delete(linesOf(book.id)),
        transaction.done,
      ]);
    }),
    append: guarded(async (book: KeptBook, lines: readonly string[]) => {
      const transaction = database.transaction(['books', 'journal'], 'readwrite', {
        durability: 'strict',
      });
      const journal = transaction.objectStore('journal');
      const last = await journal.openKeyCursor(linesOf(book.id), 'prev');
      const next = (last?.key[1] ?? 0) + 1;
      await Promise.all([
        ...lines.map((line, index) => journal.put(line, [book.id, next + index])),
        transaction.objectStore('books').put(book),
        transaction.done,
      ]);
    }),
    fold: guarded(async (id: string, snapshot: string, lines: number) => {
      const transaction = database.transaction(['snapshots', 'journal'], 'readwrite', {
        durability: 'strict',
      });
      const journal = transaction.objectStore('journal');
      const keys = await journal.getAllKeys(linesOf(id), lines);
      const last = keys.at(-1);
      await Promise.all([
        transaction.objectStore('snapshots').put(snapshot, id),
        last && journal.delete(IDBKeyRange.bound([id, 0], last)),
        transaction.done,
      ]);
    }),
    remove: guarded(async (id: string) => {
      const transaction = database.transaction(all, 'readwrite');
      await Promise.all([
        transaction.objectStore('books').delete(id),
        transaction.objectStore('snapshots').delete(id),
        transaction.objectStore('journal').delete(linesOf(id)),
        transaction.done,
      ]);
    }),
    close: () => database.close(),
  };
}

/** Whatever the browser throws comes out as a `StorageProblem`. */
function guarded<Args extends unknown[], Result>(
  work: (...args: Args) => Promise<Result>,
): (...args: Args) => Promise<Result> {
  return (...args) =>
    work(...args).catch((cause: unknown) => {
      throw problem(cause);
    });
}
