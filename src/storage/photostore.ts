import { committed } from './committed.ts';
import type { Connection } from './connection.ts';
import { unpack } from './packed.ts';
import { allOf } from './versionstore.ts';

/** Pictures beside the books, each under the book that names it and its hash. */
export interface PhotoStore {
  hashes(book: string): Promise<readonly string[]>;
  get(book: string, hash: string): Promise<ArrayBuffer | undefined>;
  put(book: string, hash: string, bytes: ArrayBuffer): Promise<void>;
  /**
   * Takes away the pictures that nothing kept of a book names any more: not its last whole, not a
   * line of its journal, which undo could go back to, not a version. Only while nobody works on it.
   */
  sweep(book: string): Promise<void>;
}

export function photosIn(withDatabase: Connection): PhotoStore {
  return {
    hashes: (book) =>
      withDatabase(async (database) => {
        const keys = await database.getAllKeys('photos', allOf(book));
        return keys.map(([, hash]) => hash);
      }),
    get: (book, hash) => withDatabase((database) => database.get('photos', [book, hash])),
    put: (book, hash, bytes) =>
      withDatabase((database) => {
        const transaction = database.transaction('photos', 'readwrite');
        return committed(transaction, [transaction.store.put(bytes, [book, hash])]);
      }),
    sweep: (book) =>
      withDatabase(async (database) => {
        const keys = await database.getAllKeys('photos', allOf(book));
        if (keys.length === 0) return;
        const [snapshot, journal, packed] = await Promise.all([
          database.get('snapshots', book),
          database.getAll('journal', allOf(book)),
          database.getAll('versionTexts', allOf(book)),
        ]);
        // What cannot be read may name a picture.
        if (!snapshot) return;
        const versions = await Promise.all(packed.map(unpack));
        const texts = [snapshot.text, snapshot.remains ?? '', ...journal, ...versions];
        const unnamed = keys.filter(([, hash]) => !texts.some((text) => text.includes(hash)));
        const transaction = database.transaction('photos', 'readwrite');
        await committed(
          transaction,
          unnamed.map((key) => transaction.store.delete(key)),
        );
      }),
  };
}
