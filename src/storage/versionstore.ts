import { committed } from './committed.ts';
import type { Connection, Database } from './connection.ts';
import { pack, unpack } from './packed.ts';
import type { KeptVersion } from './versions.ts';

/** Versions beside the books. Each call happens whole or rejects with a `StorageProblem`. */
export interface VersionStore {
  /** Those of one book, the newest first. */
  list(book: string): Promise<readonly KeptVersion[]>;
  /** The book’s file as it was; `undefined` if the version is gone. */
  text(book: string, id: string): Promise<string | undefined>;
  put(version: KeptVersion, text: string): Promise<void>;
  /** Other words for versions that are there. */
  describe(versions: readonly KeptVersion[]): Promise<void>;
  remove(book: string, ids: readonly string[]): Promise<void>;
}

export const allOf = (book: string): IDBKeyRange => IDBKeyRange.bound([book], [book, []]);

export function versionsIn(withDatabase: Connection): VersionStore {
  return {
    list: (book) =>
      withDatabase(async (database) => {
        const versions = await database.getAll('versions', allOf(book));
        return versions.sort((a, b) => (a.at < b.at ? 1 : -1));
      }),
    async text(book, id) {
      const packed = await withDatabase((database) => database.get('versionTexts', [book, id]));
      return packed === undefined ? undefined : unpack(packed);
    },
    async put(version, text) {
      const packed = await pack(text);
      await withDatabase((database) => {
        const { transaction, versions, texts } = writing(database);
        return committed(transaction, [
          versions.put(version, [version.book, version.id]),
          texts.put(packed, [version.book, version.id]),
        ]);
      });
    },
    describe: (changed) =>
      withDatabase((database) => {
        const { transaction, versions } = writing(database);
        const puts = changed.map((version) => versions.put(version, [version.book, version.id]));
        return committed(transaction, puts);
      }),
    remove: (book, ids) =>
      withDatabase((database) => {
        const { transaction, versions, texts } = writing(database);
        const deletes = ids.flatMap((id) => [
          versions.delete([book, id]),
          texts.delete([book, id]),
        ]);
        return committed(transaction, deletes);
      }),
  };
}

function writing(database: Database) {
  const transaction = database.transaction(['versions', 'versionTexts'], 'readwrite');
  return {
    transaction,
    versions: transaction.objectStore('versions'),
    texts: transaction.objectStore('versionTexts'),
  };
}
