import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import { nameOf, problem, StorageProblem } from './problems.ts';
import {
  lengthOf,
  sizeOf,
  type BookStore,
  type KeptBook,
  type ReadFromStore,
  type Snapshot,
} from './store.ts';

interface BookRecord extends KeptBook {
  /** The tab that may append. */
  readonly writer: string;
  /** The number of the last line that the snapshot stands for. */
  readonly upTo: number;
}

interface Schema extends DBSchema {
  books: { key: string; value: BookRecord };
  snapshots: { key: string; value: Snapshot };
  /** Key: book id and a number that only grows, so that lines sort in the order they were written. */
  journal: { key: [string, number]; value: string };
}

type Database = IDBPDatabase<Schema>;

const all = ['books', 'snapshots', 'journal'] as const;
const safely = { durability: 'strict' } as const;

const linesOf = (id: string): IDBKeyRange =>
  IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]);

/** Books kept in IndexedDB. Text, not objects: ten times faster to write and read. */
export function openDatabase(name = 'halfstop'): BookStore {
  const withDatabase = connecting(name);
  return {
    list: () =>
      withDatabase(async (database) => {
        const books = await database.getAll('books');
        return books
          .sort((a, b) => b.changed.localeCompare(a.changed, 'en'))
          .map(({ id, title, changed, size }) => ({ id, title, changed, size }));
      }),
    read: (id) => withDatabase((database) => read(database, id)),
    begin: (book, pages, writer) =>
      withDatabase(async (database) => {
        const { done, objectStore } = writing(database);
        const lines = objectStore('journal');
        await settled(done, [
          objectStore('books').put({ ...book, size: sizeOf(pages), writer, upTo: 0 }),
          objectStore('snapshots').put(pages.snapshot, book.id),
          lines.delete(linesOf(book.id)),
          ...pages.journal.map((line, index) => lines.put(line, [book.id, index + 1])),
        ]);
      }),
    claim: (id, writer, cutShort) =>
      withDatabase(async (database) => {
        const { done, objectStore } = writing(database);
        const books = objectStore('books');
        const journal = objectStore('journal');
        const record = await books.get(id);
        const last = cutShort ? await journal.openKeyCursor(linesOf(id), 'prev') : null;
        await settled(done, [
          record && books.put({ ...record, writer }),
          last && journal.delete(last.key),
        ]);
        if (!record) throw new StorageProblem('cleared');
      }),
    append: (book, lines, writer) =>
      withDatabase(async (database) => {
        const { done, objectStore } = writing(database);
        const record = appendable(await objectStore('books').get(book.id), writer);
        const journal = objectStore('journal');
        const last = await journal.openKeyCursor(linesOf(book.id), 'prev');
        const next = (last?.key[1] ?? record.upTo) + 1;
        await settled(done, [
          ...lines.map((line, index) => journal.put(line, [book.id, next + index])),
          objectStore('books').put({ ...record, ...book }),
        ]);
      }),
    fold: (id, upTo, snapshot, lines) =>
      withDatabase((database) => fold(database, id, upTo, snapshot, lines)),
    remove: (id) =>
      withDatabase(async (database) => {
        const { done, objectStore } = writing(database);
        await settled(done, [
          objectStore('books').delete(id),
          objectStore('snapshots').delete(id),
          objectStore('journal').delete(linesOf(id)),
        ]);
      }),
    close: withDatabase.close,
  };
}

async function read(database: Database, id: string): Promise<ReadFromStore | undefined> {
  const transaction = database.transaction(all, 'readonly');
  const [record, snapshot, journal] = await Promise.all([
    transaction.objectStore('books').get(id),
    transaction.objectStore('snapshots').get(id),
    transaction.objectStore('journal').getAll(linesOf(id)),
  ]);
  return snapshot && { snapshot, journal, upTo: record?.upTo ?? 0 };
}

async function fold(
  database: Database,
  id: string,
  upTo: number,
  snapshot: Snapshot,
  lines: number,
): Promise<boolean> {
  const { done, objectStore } = writing(database);
  const record = await objectStore('books').get(id);
  const journal = objectStore('journal');
  const keys = await journal.getAllKeys(linesOf(id), lines);
  const last = keys.at(-1);
  if (record?.upTo !== upTo || !last || keys.length < lines) {
    await done;
    return false;
  }
  const rest = await journal.getAll(IDBKeyRange.bound(last, [id, Number.MAX_SAFE_INTEGER], true));
  const size = sizeOf({ snapshot, journal: [] }) + lengthOf(rest);
  await settled(done, [
    objectStore('books').put({ ...record, size, upTo: last[1] }),
    objectStore('snapshots').put(snapshot, id),
    journal.delete(IDBKeyRange.bound([id, 0], last)),
  ]);
  return true;
}

function appendable(record: BookRecord | undefined, writer: string): BookRecord {
  if (!record) throw new StorageProblem('cleared');
  if (record.writer !== writer) throw new StorageProblem('elsewhere');
  return record;
}

function writing(database: Database) {
  const transaction = database.transaction(all, 'readwrite', safely);
  // Whoever waits for it hears of a failure; nobody waits when a request before it has failed.
  transaction.done.catch(() => undefined);
  return {
    done: transaction.done,
    objectStore: transaction.objectStore.bind(transaction),
  };
}

/** Waits for the whole. What the transaction says it failed of comes before what its parts say. */
async function settled(done: Promise<void>, requests: readonly unknown[]): Promise<void> {
  const parts = Promise.allSettled(requests);
  await done;
  await parts;
}

/**
 * Runs work on the database, which is opened when first wanted, and again when the browser has
 * closed it: it does so when its data is cleared. Whatever goes wrong comes out as a problem.
 */
function connecting(name: string) {
  let connection: Promise<Database> | undefined;
  const forget = (): void => {
    connection = undefined;
  };
  const close = (): void => {
    void connection?.then((database) => database.close()).catch(() => undefined);
    forget();
  };
  const connect = async (): Promise<Database> => {
    connection ??= openDB<Schema>(name, 1, {
      upgrade(database) {
        database.createObjectStore('books', { keyPath: 'id' });
        database.createObjectStore('snapshots');
        database.createObjectStore('journal');
      },
      // Another tab wants to clear the database or bring it forward: it need not wait for this one.
      blocking: close,
      terminated: forget,
    });
    return connection;
  };
  const attempt = async <Result>(work: (database: Database) => Promise<Result>) => {
    try {
      return await work(await connect());
    } catch (cause) {
      if (!(cause instanceof StorageProblem)) close();
      throw cause;
    }
  };
  const run = async <Result>(work: (database: Database) => Promise<Result>): Promise<Result> => {
    try {
      return await attempt(work).catch((cause: unknown) => {
        // The connection was closed under our hands; nothing of the work has happened.
        if (nameOf(cause) === 'InvalidStateError') return attempt(work);
        throw cause;
      });
    } catch (cause) {
      throw problem(cause);
    }
  };
  return Object.assign(run, { close });
}
