import { createBook } from '../book/book.ts';
import { journalLine, replay } from '../book/form/journal.ts';
import { readBook } from '../book/form/read.ts';
import { writeBook } from '../book/form/write.ts';
import type { Book, Document } from '../book/types.ts';
import { createAutosave, type SaveState } from '../storage/autosave.ts';
import { openDatabase } from '../storage/database.ts';
import { problem, type BookStore, type KeptBook } from '../storage/store.ts';

/** A book that is kept on this device from now on. */
export interface OpenedBook {
  readonly id: string;
  readonly book: Book;
  /** Resolves when everything is kept, or known not to be. */
  close(): Promise<void>;
}

export type Opening = OpenedBook | { readonly reason: string };

export interface LibraryMeans {
  readonly newId: () => string;
  readonly now: () => Date;
  readonly heard: (state: SaveState) => void;
}

/** The books of this device: list, open, begin, keep. */
export interface Library {
  list(): Promise<readonly KeptBook[]>;
  open(id: string): Promise<Opening>;
  begin(document: Document): Promise<Opening>;
  remove(id: string): Promise<void>;
}

const later = (run: () => void, milliseconds: number) => {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
};

export async function openLibrary(means: LibraryMeans): Promise<Library> {
  const store = await openDatabase();
  return {
    list: () => store.list(),
    remove: (id) => store.remove(id),
    async open(id) {
      const pages = await store.read(id);
      if (!pages) return { reason: 'This book is no longer kept on this device.' };
      const read = readBook(pages.snapshot);
      if (!read.ok) return read;
      const replayed = replay(read.document, pages.journal);
      if (!replayed.ok) return replayed;
      const size = pages.journal.reduce((sum, line) => sum + line.length, pages.snapshot.length);
      return keep(store, id, replayed.book, size, means);
    },
    async begin(document) {
      const id = means.newId();
      const text = writeBook(document);
      const opened = keep(store, id, createBook(document), text.length, means);
      try {
        await store.begin(describe(id, document, text.length, means), text);
        means.heard({ kind: 'saved', at: undefined });
      } catch (cause) {
        means.heard({ kind: 'unsaved', reason: problem(cause).message });
      }
      return opened;
    },
  };
}

function describe(id: string, { title }: Document, size: number, { now }: LibraryMeans): KeptBook {
  return { id, title, size, changed: now().toISOString() };
}

/** From here on each change goes to the journal as it happens. */
function keep(
  store: BookStore,
  id: string,
  book: Book,
  size: number,
  means: LibraryMeans,
): OpenedBook {
  const autosave = createAutosave(
    {
      store,
      later,
      heard: means.heard,
      describe: (characters) => describe(id, book.document, characters, means),
    },
    size,
  );
  const stop = book.listen((change) => autosave.add(journalLine(change)));
  means.heard(autosave.state);
  const flush = () => void autosave.flush();
  // A tab that goes to the back may never come to the front again.
  document.addEventListener('visibilitychange', flush);
  addEventListener('pagehide', flush);
  return {
    id,
    book,
    async close() {
      stop();
      document.removeEventListener('visibilitychange', flush);
      removeEventListener('pagehide', flush);
      await autosave.stop();
    },
  };
}
