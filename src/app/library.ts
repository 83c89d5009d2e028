import { createBook } from '../book/book.ts';
import { writeBook } from '../book/form/write.ts';
import type { Book, Document } from '../book/types.ts';
import { openDatabase } from '../storage/database.ts';
import { holdBook, type Hold, type Locks } from '../storage/lock.ts';
import { rawText, readPages } from '../storage/pages.ts';
import { StorageProblem } from '../storage/problems.ts';
import type { KeptBook, KeptPages } from '../storage/store.ts';
import { keepBook, watchBook, type Keeping, type OpenedBook } from './keeping.ts';

export type { OpenedBook } from './keeping.ts';

/** Why a kept book was not opened. It is left as it lies. */
export interface Unopened {
  readonly reason: string;
  /** It is there but cannot be read; `raw` gives what there is. */
  readonly damaged?: true;
}

export type Opening = OpenedBook | Unopened;

export type LibraryMeans = Pick<Keeping, 'now' | 'heard'> & { readonly newId: () => string };

/** The books of this device: list, open, begin, keep. */
export interface Library {
  list(): Promise<readonly KeptBook[]>;
  open(id: string): Promise<Opening>;
  begin(document: Document): Promise<OpenedBook>;
  remove(id: string): Promise<void>;
  /** All that is kept of a book, as it lies there, for one that cannot be opened. */
  raw(id: string): Promise<string | undefined>;
}

const cutShort =
  'The last change was only half written when this book was kept, so it is left out. Everything before it is here.';
const rescued =
  'One change in this book cannot be read. Here is the book up to that change, as a book of its own; the damaged one stays as it is.';

const free: Hold = { release: () => undefined };

/** Nothing is asked of the device before the list or a book is wanted. */
export function openLibrary(means: LibraryMeans): Library {
  const store = openDatabase();
  const keeping: Keeping = { ...means, store };
  const locks: Locks | undefined = navigator.locks;

  const begin = async (pages: KeptPages, book: Book): Promise<OpenedBook> => {
    const id = means.newId();
    const hold = (await holdBook(id, locks)) ?? free;
    return keepBook(keeping, { id, pages, from: 'new', hold }, book);
  };
  /** What can be read of a book whose journal is damaged in its midst. */
  const rescue = async (pages: KeptPages, lines: number): Promise<OpenedBook | undefined> => {
    const part = { ...pages, journal: pages.journal.slice(0, lines) };
    const read = readPages(part);
    if (!read.ok) return undefined;
    const opened = await begin(part, read.book);
    const title = `${read.book.document.title}, up to the damage`;
    read.book.run({ label: 'Rename the book', steps: [{ kind: 'setTitle', title }] });
    return { ...opened, remark: rescued };
  };
  const openAs = async (id: string, hold: Hold | undefined): Promise<Opening> => {
    const pages = await store.read(id);
    if (!pages) return { reason: 'This book is no longer kept on this device.' };
    const read = readPages(pages);
    if (!read.ok) {
      const rescued = 'done' in read ? await rescue(pages, read.done) : undefined;
      return rescued ?? { reason: read.reason, damaged: true };
    }
    if (!hold) return watchBook(keeping, id, read.book);
    const from = { last: pages.last, cutShort: read.cutShort };
    const opened = await keepBook(keeping, { id, pages, from, hold }, read.book);
    return read.cutShort ? { ...opened, remark: cutShort } : opened;
  };

  return {
    list: () => store.list(),
    async open(id) {
      const hold = await holdBook(id, locks);
      let opening: Opening | undefined;
      try {
        return (opening = await openAs(id, hold));
      } finally {
        // The id is another one where a part was opened as a book of its own.
        if (!opening || 'reason' in opening || opening.id !== id) hold?.release();
      }
    },
    begin: (document) =>
      begin(
        { snapshot: { text: writeBook(document), remains: null }, journal: [] },
        createBook(document),
      ),
    async remove(id) {
      const hold = await holdBook(id, locks);
      if (!hold) throw new StorageProblem('elsewhere');
      await store.remove(id).finally(hold.release);
    },
    async raw(id) {
      const pages = await store.read(id);
      return pages && rawText(pages);
    },
  };
}
