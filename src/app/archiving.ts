import { writeBook } from '../book/form/write.ts';
import type { Archive, ArchivedBook, Entry } from '../files/archive.ts';
import { hashOf } from '../storage/packed.ts';
import { readPages } from '../storage/pages.ts';
import type { BookStore } from '../storage/store.ts';
import type { KeptBook } from '../storage/kept.ts';
import { versionKinds, type KeptVersion, type VersionKind } from '../storage/versions.ts';
import { words } from '../words/words.ts';

/** Every kept book as it is now, those in the bin too, with its versions and photos. */
export async function gather(
  store: BookStore,
  made: string,
): Promise<{ readonly archive: Archive; readonly unreadable: readonly string[] }> {
  const books: ArchivedBook[] = [];
  const unreadable: string[] = [];
  const beside: { name: string; bytes: Uint8Array }[] = [];
  for (const kept of await store.list()) {
    const pages = await store.read(kept.id);
    const read = pages && readPages(pages);
    if (!read?.ok) {
      unreadable.push(kept.title);
      continue;
    }
    books.push({
      id: kept.id,
      title: kept.title,
      text: writeBook(read.book.document),
      entry: { changed: kept.changed, ...(kept.binned !== undefined && { binned: kept.binned }) },
      versions: await versionsOf(store, kept.id),
    });
    for (const hash of await store.photos.hashes(kept.id)) {
      const bytes = await store.photos.get(kept.id, hash);
      if (bytes) beside.push({ name: photoName(kept.id, hash), bytes: new Uint8Array(bytes) });
    }
  }
  return { archive: { made, books, beside }, unreadable };
}

const photoName = (book: string, hash: string): string => `${book}/${hash}.jpg`;

async function versionsOf(store: BookStore, book: string) {
  const found: { id: string; text: string; entry: Entry }[] = [];
  for (const { id, at, kind, name, changes } of await store.versions.list(book)) {
    const text = await store.versions.text(book, id);
    if (text !== undefined) found.push({ id, text, entry: { at, kind, name, changes } });
  }
  return found;
}

/** What became of the books of an archive. */
export interface TakenIn {
  /** New here. */
  readonly added: number;
  /** Here in another state already: taken in as books of their own. */
  readonly beside: number;
  /** Here as they are. */
  readonly same: number;
}

/**
 * Takes in the books of an archive. Nothing that is kept here is overwritten: a book that is here in
 * another state is taken in beside it, under another title.
 */
export async function merge(
  store: BookStore,
  { books, beside }: Archive,
  newId: () => string,
): Promise<TakenIn> {
  const taken = { added: 0, beside: 0, same: 0 };
  const here = new Map((await store.list()).map((book) => [book.id, book]));
  const putPhotos = (from: string, to: string) => takePhotos(store, beside, from, to);
  for (const book of books) {
    const there = here.get(book.id);
    if (!there) {
      await putPhotos(book.id, book.id);
      await put(store, book, book.id, book.text, keptBook(book));
      taken.added += 1;
    } else if (await isSame(store, book)) {
      await putPhotos(book.id, book.id);
      await putVersions(store, book, book.id);
      taken.same += 1;
    } else {
      const id = newId();
      await putPhotos(book.id, id);
      const title = words.app.fromArchive(book.title);
      const text = withTitle(book.text, title);
      await put(store, book, id, text, { ...keptBook(book), id, title });
      taken.beside += 1;
    }
  }
  return taken;
}

/** Pictures before the book that names them. One that is not what its hash says is left out. */
async function takePhotos(
  store: BookStore,
  beside: Archive['beside'],
  from: string,
  to: string,
): Promise<void> {
  for (const { name, bytes } of beside) {
    const [, hash = ''] = /^[^/]+\/([0-9a-f]{64})\.jpg$/.exec(name) ?? [];
    if (name !== photoName(from, hash)) continue;
    const own = new Uint8Array(bytes);
    if ((await hashOf(own)) === hash) await store.photos.put(to, hash, own.buffer);
  }
}

const keptBook = ({ id, title, text, entry }: ArchivedBook): KeptBook => ({
  id,
  title,
  changed: typeof entry['changed'] === 'string' ? entry['changed'] : '',
  size: text.length,
  ...(typeof entry['binned'] === 'string' && { binned: entry['binned'] }),
});

async function isSame(store: BookStore, { id, text }: ArchivedBook): Promise<boolean> {
  const pages = await store.read(id);
  const read = pages && readPages(pages);
  return read?.ok === true && writeBook(read.book.document) === text;
}

async function put(
  store: BookStore,
  book: ArchivedBook,
  id: string,
  text: string,
  kept: KeptBook,
): Promise<void> {
  await store.begin(kept, { snapshot: { text, remains: null }, journal: [] });
  await putVersions(store, book, id);
}

async function putVersions(store: BookStore, { versions }: ArchivedBook, book: string) {
  const there = new Set((await store.versions.list(book)).map(({ id }) => id));
  for (const version of versions) {
    if (there.has(version.id)) continue;
    const { at, kind, name, changes } = version.entry;
    const kept: KeptVersion = {
      book,
      id: version.id,
      at: typeof at === 'string' ? at : '',
      kind: versionKinds.find((known): known is VersionKind => known === kind) ?? 'automatic',
      name: typeof name === 'string' ? name : '',
      size: version.text.length,
      hash: await hashOf(version.text),
      changes: typeof changes === 'string' ? changes : '',
      since: null,
    };
    await store.versions.put(kept, version.text);
  }
}

/** The title stands on a line of its own in the form of the file. */
const withTitle = (text: string, title: string): string =>
  text.replace(/^ "title": .*,$/m, () => ` "title": ${JSON.stringify(title)},`);
