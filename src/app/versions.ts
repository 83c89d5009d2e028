import { carry, photosOn } from '../book/form/photos.ts';
import { readBook } from '../book/form/read.ts';
import { become } from '../book/make/become.ts';
import type { Document } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import type { ComparisonView, VersionEntry, VersionsView } from '../panels/kept/view.ts';
import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import { problem } from '../storage/problems.ts';
import type { KeptVersion, VersionKind } from '../storage/versions.ts';
import type { Library, OpenedBook } from './library.ts';
import { sizeWritten, whenWritten, clockWritten } from './place.ts';
import { versionsApart } from './versions-apart.ts';
import { words } from '../words/words.ts';

export interface VersionsMeans {
  readonly locale: string;
  readonly now: () => Date;
  readonly library: Library;
  readonly opened: () => OpenedBook | undefined;
  begin(document: Document): Promise<Outcome>;
}

/** The versions of the open book. */
export interface Versions {
  readonly view: ReadonlySignal<VersionsView>;
  readonly comparison: ReadonlySignal<ComparisonView | null>;
  /** Reads the list anew. */
  look(): Promise<Outcome>;
  keep(kind: VersionKind, name?: string): Promise<Outcome>;
  /** Two versions, the earlier first; `null` is the book as it is now. */
  compare(before: string, after: string | null): Promise<Outcome>;
  endComparison(): void;
  /** Puts a version in the place of the present state, which is kept as a version first. */
  restore(id: string): Promise<Outcome>;
  /** Opens a version as a book of its own. */
  openApart(id: string): Promise<Outcome>;
  remove(id: string): Promise<Outcome>;
}

const ok: Outcome = { ok: true };
const noBook: Outcome = { ok: false, reason: words.app.openFirst };
const gone: Outcome = { ok: false, reason: words.versions.gone };
const empty: VersionsView = { busy: true, versions: [] };

const titles: Readonly<Record<VersionKind, string>> = {
  named: words.versions.byName,
  saved: words.versions.savedToFile,
  restored: words.versions.beforeRestore,
  automatic: words.versions.whileWorking,
};

export function createVersions({ locale, now, library, opened, begin }: VersionsMeans): Versions {
  const view = signal<VersionsView>(empty);
  const comparison = signal<ComparisonView | null>(null);
  const store = library.versions;

  const when = (at: string): string => {
    const day = whenWritten(at, now(), locale);
    return day.startsWith('today') ? day : `${day}, ${clockWritten(at, locale)}`;
  };
  const entry = ({ id, at, kind, name, size, changes }: KeptVersion): VersionEntry => ({
    id,
    when: when(at),
    title: name || titles[kind],
    named: kind === 'named',
    size: sizeWritten(size, locale),
    changes,
  });
  const failed = (cause: unknown): Outcome => ({ ok: false, reason: problem(cause).message });
  const withBook = async (work: (book: OpenedBook) => Promise<Outcome>): Promise<Outcome> => {
    const book = opened();
    return book ? work(book).catch(failed) : noBook;
  };
  const look = (): Promise<Outcome> =>
    withBook(async ({ id }) => {
      try {
        view.value = { busy: false, versions: (await store.list(id)).map(entry) };
        return ok;
      } catch (cause) {
        view.value = { ...empty, busy: false, trouble: problem(cause).atStart };
        return ok;
      }
    });
  const titleOf = (id: string | null): string => {
    if (id === null) return words.versions.now;
    const found = view.value.versions.find((version) => version.id === id);
    return found ? `${found.title}, ${found.when}` : words.versions.aVersion;
  };

  return {
    view,
    comparison,
    look,
    keep: (kind, name) =>
      withBook(async (book) => {
        const kept = await book.version(kind, name);
        await look();
        const already = words.versions.nothingChanged;
        return { ok: true, say: kept ? words.versions.kept(entry(kept).title) : already };
      }),
    compare: (before, after) =>
      withBook(async (book) => {
        await book.keep();
        const answer = await versionsApart({ job: 'compare', book: book.id, before, after });
        if (!('comparison' in answer)) return gone;
        const found = answer.comparison;
        if ('reason' in found) return { ok: false, reason: found.reason };
        comparison.value = { ...found, before: titleOf(before), after: titleOf(after) };
        return ok;
      }),
    endComparison: () => (comparison.value = null),
    restore: (id) =>
      withBook(async (book) => {
        const text = await store.text(book.id, id);
        const read = text === undefined ? undefined : readBook(text);
        if (!read) return gone;
        if (!read.ok) return read;
        const name = titleOf(id);
        await book.version('restored');
        const made = become(book.book.document, read.document, words.versions.restore(name));
        if (!made.ok) return made;
        const done = book.book.run(made.transaction);
        if (!done.ok) return done;
        await look();
        const say = done.change ? words.versions.restored(name) : words.versions.already;
        return { ok: true, say };
      }),
    openApart: (id) =>
      withBook(async (book) => {
        const text = await store.text(book.id, id);
        const read = text === undefined ? undefined : readBook(text);
        if (!read) return gone;
        if (!read.ok) return read;
        carry(read.document, await book.photos.files(photosOn(read.document)));
        return begin(read.document);
      }),
    remove: (id) =>
      withBook(async (book) => {
        await store.remove(book.id, [id]);
        return look();
      }),
  };
}
