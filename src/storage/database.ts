import { committed } from './committed.ts';
import { connect, type Database } from './connection.ts';
import { photosIn } from './photostore.ts';
import { nameOf, StorageProblem } from './problems.ts';
import { sizeOf, type BookStore, type ReadFromStore } from './store.ts';
import { type Snapshot } from './kept.ts';
import { allOf, versionsIn } from './versionstore.ts';

/** Books kept in IndexedDB. Text, not objects: ten times faster to write and read. */
export function openDatabase(name = 'halfstop', cleared?: () => void): BookStore {
  const withDatabase = connect(name, cleared);
  return {
    list: () =>
      withDatabase(async (database) => {
        const books = await database.getAll('books');
        return books.sort((a, b) => b.changed.localeCompare(a.changed, 'en'));
      }),
    read: (id) => withDatabase((database) => read(database, id)),
    begin: (book, pages) =>
      withDatabase(async (database) => {
        const { books, snapshots, journal, committed } = writing(database);
        await committed([
          books.put({ ...book, size: sizeOf(pages) }),
          snapshots.put({ ...pages.snapshot, upTo: 0 }, book.id),
          journal.delete(linesOf(book.id)),
          ...pages.journal.map((line, index) => journal.put(line, [book.id, index + 1])),
        ]);
      }),
    claim: (id, last, cutShort) =>
      withDatabase(async (database) => {
        const { snapshots, journal, committed } = writing(database, 'relaxed');
        const there = snapshots.getKey(id);
        await committed([
          there,
          cutShort && journal.put('', [id, last]),
          journal.add('', [id, last + 1]),
        ]).catch(unlessTaken);
        if ((await there) === undefined) throw new StorageProblem('cleared');
      }),
    append: (book, lines, last) =>
      withDatabase(async (database) => {
        const { books, snapshots, journal, committed } = writing(database, 'relaxed');
        // Everything is asked for at once: what was typed is then safe, however busy the page is.
        const there = snapshots.getKey(book.id);
        await committed([
          there,
          ...lines.map((line, index) => journal.add(line, [book.id, last + 1 + index])),
          books.put(book),
        ]).catch(unlessTaken);
        if ((await there) === undefined) throw new StorageProblem('cleared');
      }),
    settle: (book) =>
      withDatabase(async (database) => {
        const { books, snapshots, committed } = writing(database);
        if ((await snapshots.getKey(book.id)) === undefined) throw new StorageProblem('cleared');
        await committed([books.put(book)]);
      }),
    fold: (id, upTo, snapshot, through) =>
      withDatabase((database) => fold(database, id, upTo, snapshot, through)),
    bin: (id, binned) =>
      withDatabase(async (database) => {
        const { books, committed } = writing(database);
        const book = await books.get(id);
        if (!book) throw new StorageProblem('cleared');
        const { binned: _, ...rest } = book;
        await committed([books.put(binned === null ? rest : { ...rest, binned })]);
      }),
    remove: (id) =>
      withDatabase(async (database) => {
        const transaction = database.transaction(
          ['books', 'snapshots', 'journal', 'versions', 'versionTexts', 'photos'],
          'readwrite',
        );
        await committed(transaction, [
          transaction.objectStore('books').delete(id),
          transaction.objectStore('snapshots').delete(id),
          transaction.objectStore('journal').delete(linesOf(id)),
          transaction.objectStore('versions').delete(allOf(id)),
          transaction.objectStore('versionTexts').delete(allOf(id)),
          transaction.objectStore('photos').delete(allOf(id)),
        ]);
      }),
    versions: versionsIn(withDatabase),
    photos: photosIn(withDatabase),
    close: withDatabase.close,
  };
}

const linesOf = (id: string, through = Number.MAX_SAFE_INTEGER): IDBKeyRange =>
  IDBKeyRange.bound([id, 0], [id, through]);

async function read(database: Database, id: string): Promise<ReadFromStore | undefined> {
  const transaction = database.transaction(['snapshots', 'journal']);
  const journal = transaction.objectStore('journal');
  const [kept, keys, lines] = await Promise.all([
    transaction.objectStore('snapshots').get(id),
    journal.getAllKeys(linesOf(id)),
    journal.getAll(linesOf(id)),
  ]);
  if (!kept) return undefined;
  const { upTo, ...snapshot } = kept;
  const numbers = keys.map(([, number]) => number);
  return {
    snapshot,
    journal: lines.filter((line) => line !== ''),
    numbers: numbers.filter((_, index) => lines[index] !== ''),
    upTo,
    last: numbers.at(-1) ?? upTo,
  };
}

async function fold(
  database: Database,
  id: string,
  upTo: number,
  snapshot: Snapshot,
  through: number,
): Promise<boolean> {
  const { snapshots, journal, committed } = writing(database);
  const kept = await snapshots.get(id);
  if (kept?.upTo !== upTo) return false;
  // The last number stays taken, whatever is folded away.
  await committed([
    snapshots.put({ ...snapshot, upTo: through }, id),
    journal.delete(linesOf(id, through)),
  ]);
  return true;
}

function writing(database: Database, durability: IDBTransactionDurability = 'strict') {
  const transaction = database.transaction(['books', 'snapshots', 'journal'], 'readwrite', {
    durability,
  });
  return {
    books: transaction.objectStore('books'),
    snapshots: transaction.objectStore('snapshots'),
    journal: transaction.objectStore('journal'),
    /** Nothing more will be asked for: all of it happens or nothing. */
    committed: (requests: readonly unknown[]) => committed(transaction, requests),
  };
}

function unlessTaken(cause: unknown): never {
  throw nameOf(cause) === 'ConstraintError' ? new StorageProblem('elsewhere', cause) : cause;
}
