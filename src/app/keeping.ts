import { journalLine } from '../book/form/journal.ts';
import { writeBook } from '../book/form/write.ts';
import type { Book } from '../book/types.ts';
import { createAutosave, type SaveState } from '../storage/autosave.ts';
import { createFolding } from '../storage/folding.ts';
import { createKeeper, type Beginning } from '../storage/keeper.ts';
import type { Hold } from '../storage/lock.ts';
import { problem, StorageProblem } from '../storage/problems.ts';
import { createPace, type Pace } from '../storage/pace.ts';
import { askToStay } from '../storage/stay.ts';
import { lengthOf, sizeOf, type BookStore, type KeptPages } from '../storage/store.ts';
import type { KeptVersion, VersionKind } from '../storage/versions.ts';
import { foldApart } from './fold.ts';
import { createPhotos, type Photos } from './photos.ts';
import { versionsApart } from './versions-apart.ts';

/** A book on the desk that is kept on this device from now on, or is known not to be. */
export interface OpenedBook {
  readonly id: string;
  readonly book: Book;
  readonly photos: Photos;
  /** What there is to know about how it was opened. */
  readonly remark?: string;
  /** False when something was done to it that is not kept and may never be. */
  isKept(): boolean;
  /** Writes what is not kept yet; false if that cannot be. */
  keep(): Promise<boolean>;
  /** Looks whether it still lies where it was kept, and keeps it again where not. */
  keepAgain(): Promise<void>;
  /** Keeps its present state as a version; `undefined` if it is the last version already. */
  version(kind: VersionKind, name?: string): Promise<KeptVersion | undefined>;
  /** Resolves when everything is kept, or known not to be. */
  close(): Promise<void>;
}

export interface Keeping {
  readonly store: BookStore;
  readonly now: () => Date;
  readonly newId: () => string;
  readonly heard: (state: SaveState) => void;
  /** What was kept of the open book has been cleared; the book itself is kept again. */
  readonly cleared: () => void;
}

export interface Kept {
  readonly id: string;
  readonly pages: KeptPages;
  readonly from: Beginning;
  readonly hold: Hold;
}

const later = (run: () => void, milliseconds: number) => {
  const timer = setTimeout(run, milliseconds);
  return () => clearTimeout(timer);
};

/** From here on each change goes to the journal as it happens. */
export async function keepBook(means: Keeping, kept: Kept, book: Book): Promise<OpenedBook> {
  const { id, pages, from, hold } = kept;
  let closed = false;
  let touched = false;
  const keeper = createKeeper({
    store: means.store,
    pages,
    from,
    describe: (size) => ({
      id,
      title: book.document.title,
      changed: means.now().toISOString(),
      size,
    }),
  });
  const folding = createFolding(pages.journal.length, sizeOf(pages), async () => {
    const away = await foldApart(id);
    if (away) keeper.folded(away.characters);
    return away;
  });
  const autosave = createAutosave({
    later,
    heard: (state) => {
      if (!closed) means.heard(state);
    },
    async write(lines) {
      await keeper.write(lines).catch((cause: unknown) => {
        if (problem(cause).kind === 'cleared') {
          means.cleared();
          void photos.keepAgain();
        }
        throw cause;
      });
      folding.grew(lines.length, lengthOf(lines));
      if (lines.length > 0) void askToStay(navigator.storage);
    },
    settle: () => keeper.settle(),
  });
  let pace: Pace | undefined;
  let versioning: Promise<unknown> = Promise.resolve();
  const version = async (kind: VersionKind, name = ''): Promise<KeptVersion | undefined> => {
    // What was asked for is the state of this moment; the worker itself reads it a little later.
    const text = kind === 'automatic' ? undefined : writeBook(book.document);
    await autosave.flush();
    if (!isKept()) throw new StorageProblem('failed');
    pace?.kept();
    const at = means.now().toISOString();
    const wanted = {
      book: id,
      id: means.newId(),
      kind,
      name,
      at,
      ...(text !== undefined && { text }),
    };
    // One after the other: each is compared with the one before it.
    const answering = versioning.then(() => versionsApart({ job: 'keep', ...wanted }));
    versioning = answering.catch(() => undefined);
    const answer = await answering;
    return 'kept' in answer ? (answer.kept ?? undefined) : undefined;
  };
  void means.store.versions
    .list(id)
    .then(([newest]) => {
      if (closed) return;
      const last = newest ? new Date(newest.at) : means.now();
      // What cannot be kept now is kept with the next one.
      const keep = () => void version('automatic').catch(() => undefined);
      pace = createPace({ now: means.now, later, last, keep });
    })
    .catch(() => undefined);
  const isKept = () => !touched || autosave.state.kind !== 'unsaved';
  const photos = createPhotos(id, means.store.photos, true);
  const stops = [
    book.listen((change) => {
      touched = true;
      pace?.worked();
      autosave.add(journalLine(change));
    }),
    whenLeft(() => void autosave.flush(), isKept),
  ];
  if (from === 'new') await autosave.begin();
  else {
    // Where it fails now, it is done before the first line.
    await keeper.claim().catch(() => undefined);
    means.heard(autosave.state);
  }
  return {
    id,
    book,
    photos,
    isKept,
    async keep() {
      await autosave.flush();
      return isKept();
    },
    keepAgain: () => autosave.begin(),
    version,
    async close() {
      closed = true;
      pace?.stop();
      for (const stop of stops) stop();
      await autosave.stop();
      photos.close();
      // Undo ends here: a photo that nothing kept names is not seen again.
      if (isKept()) await means.store.photos.sweep(id).catch(() => undefined);
      hold.release();
    },
  };
}

/** A book that another tab keeps: here it can be looked at, tried out and saved to a file. */
export function watchBook(means: Keeping, id: string, book: Book): OpenedBook {
  let touched = false;
  const isKept = () => !touched;
  const stops = [
    book.listen(() => {
      touched = true;
    }),
    whenLeft(() => undefined, isKept),
  ];
  means.heard({ kind: 'unsaved', reason: new StorageProblem('elsewhere').message });
  const photos = createPhotos(id, means.store.photos, false);
  return {
    id,
    book,
    photos,
    isKept,
    keep: () => Promise.resolve(isKept()),
    keepAgain: () => Promise.resolve(),
    version: () => Promise.reject(new StorageProblem('elsewhere')),
    close() {
      for (const stop of stops) stop();
      photos.close();
      return Promise.resolve();
    },
  };
}

/** Saves before the page may be gone for good; if that cannot be, lets the browser ask. */
function whenLeft(flush: () => void, isKept: () => boolean): () => void {
  const ask = (event: BeforeUnloadEvent) => {
    flush();
    if (!isKept()) event.preventDefault();
  };
  // A tab that goes to the back may never come to the front again.
  document.addEventListener('visibilitychange', flush);
  addEventListener('pagehide', flush);
  addEventListener('beforeunload', ask);
  return () => {
    document.removeEventListener('visibilitychange', flush);
    removeEventListener('pagehide', flush);
    removeEventListener('beforeunload', ask);
  };
}
