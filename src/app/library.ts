import { createBook } from '../book/book.ts';
import { photosOn, photosWith } from '../book/form/photos.ts';
import { writeBook } from '../book/form/write.ts';
import type { Book, Document } from '../book/types.ts';
import { openDatabase } from '../storage/database.ts';
import { holdBook, type Hold, type Locks } from '../storage/lock.ts';
import { rawText, readPages } from '../storage/pages.ts';
import { remembering } from '../storage/memory.ts';
import { StorageProblem } from '../storage/problems.ts';
import type { KeptPages } from '../storage/store.ts';
import type { KeptBook } from '../storage/kept.ts';
import { createPhotos } from './photos.ts';
import type { VersionStore } from '../storage/versionstore.ts';
import { keepBook, watchBook, type Keeping, type OpenedBook } from './keeping.ts';
import { words } from '../words/words.ts';

export type { OpenedBook } from './keeping.ts';

/** Why a kept book was not opened. It is left as it lies. */
export interface Unopened {
  readonly reason: string;
  /** It is there but cannot be read; `raw` gives what there is. */
  readonly damaged?: true;
  /** Nothing is kept of it here. */
  readonly gone?: true;
}

export type Opening = OpenedBook | Unopened;

export interface LibraryMeans extends Pick<Keeping, 'now' | 'heard' | 'newId' | 'cleared'> {
  /** The browser has closed the books under our hands, as it does when it clears them. */
  readonly closed: () => void;
}

/** The books of this device: list, open, begin, keep. */
export interface Library {
  /** The last changed first; without those in the bin. */
  list(): Promise<readonly KeptBook[]>;
  /** Those in the bin. What has lain there for thirty days is gone. */
  binned(): Promise<readonly KeptBook[]>;
  /** `wait`: for so many milliseconds another tab may still be letting go of it. */
  open(id: string, wait?: number): Promise<Opening>;
  begin(document: Document): Promise<OpenedBook>;
  /** Titles of books that lay here and are gone though nobody removed them. */
  missing(): Promise<readonly string[]>;
  forgetMissing(): Promise<void>;
  /** What is kept of the book that goes by this title and was changed last. */
  titled(title: string): Promise<{ readonly id: string; readonly document: Document } | undefined>;
  /** Puts a book in the bin. */
  bin(id: string): Promise<void>;
  takeOut(id: string): Promise<void>;
  /** Takes a book away for good, with its versions. */
  remove(id: string): Promise<void>;
  readonly versions: VersionStore;
  /** All that is kept of a book, as it lies there, for one that cannot be opened. */
  raw(id: string): Promise<string | undefined>;
}

const cutShort = words.shelf.halfWritten;
const rescued = words.shelf.damaged;

const rescuedBefore = words.shelf.damagedBefore;

/** What could be read of a damaged book is another book, and each time the same. */
const partOf = (id: string): string => `${id}-part`;

const inBin = words.shelf.inBin;

/** So long a book stays in the bin. */
export const binDays = 30;

const daysBefore = (now: Date, days: number): string =>
  new Date(now.getTime() - days * 24 * 60 * 60 * 1_000).toISOString();

const free: Hold = { release: () => undefined };

/** Nothing is asked of the device before the list or a book is wanted. */
export function openLibrary(means: LibraryMeans): Library {
  const store = remembering(openDatabase(undefined, means.closed), lasting());
  const keeping: Keeping = { ...means, store };
  const locks: Locks | undefined = navigator.locks;

  const begin = async (pages: KeptPages, book: Book, id = means.newId()): Promise<OpenedBook> => {
    const hold = (await holdBook(id, locks)) ?? free;
    return keepBook(keeping, { id, pages, from: 'new', hold }, book);
  };
  /** What can be read of a book whose journal is damaged in its midst. */
  const rescue = async (
    id: string,
    pages: KeptPages,
    lines: number,
  ): Promise<Opening | undefined> => {
    if (await store.read(partOf(id))) {
      const before = await open(partOf(id));
      return 'reason' in before ? before : { ...before, remark: rescuedBefore };
    }
    const part = { ...pages, journal: pages.journal.slice(0, lines) };
    const read = readPages(part);
    if (!read.ok) return undefined;
    const opened = await begin(part, read.book, partOf(id));
    const pictures = createPhotos(id, store.photos, false);
    await opened.photos.takeIn(await pictures.files(photosOn(read.book.document)));
    const title = words.shelf.upToDamage(read.book.document.title);
    read.book.run({ label: words.shelf.rename, steps: [{ kind: 'setTitle', title }] });
    return { ...opened, remark: rescued };
  };
  const binned = async () => (await store.list()).filter((book) => book.binned !== undefined);
  const alone = async (id: string, work: () => Promise<void>): Promise<void> => {
    const hold = await holdBook(id, locks);
    if (!hold) throw new StorageProblem('elsewhere');
    await work().finally(hold.release);
  };
  const openAs = async (id: string, hold: Hold | undefined): Promise<Opening> => {
    const pages = await store.read(id);
    if (!pages) return { reason: words.shelf.gone, gone: true };
    if ((await binned()).some((book) => book.id === id)) return { reason: inBin };
    const read = readPages(pages);
    if (!read.ok) {
      const rescued = 'done' in read ? await rescue(id, pages, read.done) : undefined;
      return rescued ?? { reason: read.reason, damaged: true };
    }
    if (!hold) return watchBook(keeping, id, read.book);
    const from = { last: pages.last, cutShort: read.cutShort };
    const opened = await keepBook(keeping, { id, pages, from, hold }, read.book);
    return read.cutShort ? { ...opened, remark: cutShort } : opened;
  };

  async function open(id: string, wait?: number): Promise<Opening> {
    const hold = await holdBook(id, locks, wait);
    let opening: Opening | undefined;
    try {
      return (opening = await openAs(id, hold));
    } finally {
      // The id is another one where a part was opened as a book of its own.
      if (!opening || 'reason' in opening || opening.id !== id) hold?.release();
    }
  }

  return {
    list: async () => (await store.list()).filter((book) => book.binned === undefined),
    async binned() {
      const books = await binned();
      const old = books.filter(
        ({ binned: since = '' }) => since <= daysBefore(means.now(), binDays),
      );
      for (const { id } of old) await store.remove(id);
      return books.filter((book) => !old.includes(book));
    },
    open,
    async begin(document) {
      const snapshot = { text: writeBook(document), remains: null };
      const opened = await begin({ snapshot, journal: [] }, createBook(document));
      await opened.photos.takeIn(photosWith(document));
      return opened;
    },
    async titled(title) {
      const all = await store.list();
      const id = all.find((book) => book.binned === undefined && book.title === title)?.id;
      const pages = id === undefined ? undefined : await store.read(id);
      const read = pages && readPages(pages);
      return id !== undefined && read?.ok ? { id, document: read.book.document } : undefined;
    },
    bin: (id) => alone(id, () => store.bin(id, means.now().toISOString())),
    takeOut: (id) => store.bin(id, null),
    remove: (id) => alone(id, () => store.remove(id)),
    missing: () => store.missing(),
    forgetMissing: () => store.forgetMissing(),
    versions: store.versions,
    async raw(id) {
      const pages = await store.read(id);
      return pages && rawText(pages);
    },
  };
}

function lasting(): Storage | undefined {
  try {
    return localStorage;
  } catch {
    return undefined;
  }
}
