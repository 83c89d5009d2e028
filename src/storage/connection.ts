import { openDB, unwrap, wrap, type DBSchema, type IDBPDatabase } from 'idb';
import { nameOf, problem, StorageProblem } from './problems.ts';
import type { Packed } from './packed.ts';
import type { KeptBook, Snapshot } from './kept.ts';
import type { KeptVersion } from './versions.ts';

interface Schema extends DBSchema {
  books: { key: string; value: KeptBook };
  snapshots: { key: string; value: KeptSnapshot };
  /**
   * Key: book id and a number that only grows, so that lines sort in the order they were written.
   * An empty line only takes a number; see `BookStore.claim`.
   */
  journal: { key: [string, number]; value: string };
  /** Key of both: book id and the id of the version. */
  versions: { key: [string, string]; value: KeptVersion };
  versionTexts: { key: [string, string]; value: Packed };
  /** Key: book id and hash. */
  photos: { key: [string, string]; value: ArrayBuffer };
}

export interface KeptSnapshot extends Snapshot {
  /** The number of the last line that it stands for. */
  readonly upTo: number;
}

export type Database = IDBPDatabase<Schema>;

/** What each version of the database added. A browser goes through those that it does not have. */
const steps: readonly ((database: Database) => void)[] = [
  (database) => {
    database.createObjectStore('books', { keyPath: 'id' });
    database.createObjectStore('snapshots');
    database.createObjectStore('journal');
  },
  (database) => {
    database.createObjectStore('versions');
    database.createObjectStore('versionTexts');
  },
  (database) => {
    database.createObjectStore('photos');
  },
];

function open(
  name: string,
  closed: () => void,
  wanted: (gone: boolean) => void,
): Promise<Database> {
  return openDB<Schema>(name, steps.length, {
    upgrade(database, before) {
      for (const step of steps.slice(before)) step(database);
    },
    terminated: closed,
    blocking: (_, version) => wanted(version === null),
  }).then(calm);
}

/**
 * What a browser calls off it says through the requests, which are waited for. The end of a
 * transaction, which only writing waits for, need not be heard by anybody.
 */
function calm(database: Database): Database {
  const raw = unwrap(database);
  const begin = raw.transaction.bind(raw);
  raw.transaction = (...asked) => {
    const transaction = begin(...asked);
    wrap(transaction).done.catch(() => undefined);
    return transaction;
  };
  return database;
}

export interface Connection {
  <Result>(work: (database: Database) => Promise<Result>): Promise<Result>;
  close(): void;
}

/**
 * Runs work on the database, which is opened when first wanted, and again when the browser has
 * closed it: it does so when its data is cleared, and then `cleared` hears of it. Whatever goes wrong
 * comes out as a problem.
 */
export function connect(name: string, cleared: () => void = () => undefined): Connection {
  let connection: Promise<Database> | undefined;
  const forget = (): void => {
    connection = undefined;
  };
  const lost = (): void => {
    forget();
    cleared();
  };
  const close = (): void => {
    void connection?.then((database) => database.close()).catch(() => undefined);
    forget();
  };
  const attempt = async <Result>(work: (database: Database) => Promise<Result>) => {
    try {
      // Another tab may want to clear the database or bring it forward: it need not wait for this.
      connection ??= open(name, lost, (gone) => {
        close();
        if (gone) cleared();
      });
      return await work(await connection);
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
