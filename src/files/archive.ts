import { strFromU8, strToU8, zipSync, type Zippable } from 'fflate';
import { readBook } from '../book/form/read.ts';
import type { Json, Refusal } from '../book/types.ts';
import { words } from '../words/words.ts';
import { most, Refused } from './in/refused.ts';
import { unzip, type UnzipLimits } from './in/unzip.ts';

/** Everything that is kept on a device, in one file. */
export interface Archive {
  /** When it was made, as an ISO 8601 instant. */
  readonly made: string;
  readonly books: readonly ArchivedBook[];
  /** Photos and the like, by the name they are kept under. */
  readonly beside: readonly { readonly name: string; readonly bytes: Uint8Array }[];
}

export interface ArchivedBook {
  readonly id: string;
  readonly title: string;
  /** The book’s file. */
  readonly text: string;
  /** What the list of books says of it. */
  readonly entry: Entry;
  readonly versions: readonly ArchivedVersion[];
}

export interface ArchivedVersion {
  readonly id: string;
  readonly text: string;
  readonly entry: Entry;
}

export type Entry = { readonly [key: string]: Json };

const form = 'halfstop archive';
const list = 'archive.json';
/** No archive of ours comes near it; a file made to fill the memory does. */
const mostBytes = 2 ** 31;
const limits: UnzipLimits = {
  ...{ packed: mostBytes, unpacked: mostBytes, ratio: most.ratio },
  parts: 100_000,
};

/** The archive as a zip file. The undo history of the books is not in it. */
export function writeArchive({ made, books, beside }: Archive): Uint8Array<ArrayBuffer> {
  const files: Zippable = { 'READ ME.txt': strToU8(`${words.archive.readMe.join('\n')}\n`) };
  const listed = books.map(({ id, title, text, entry, versions }) => {
    const file = `books/${fileName(title)} ${id}.halfstop`;
    files[file] = strToU8(text);
    return {
      id,
      title,
      file,
      entry,
      versions: versions.map((version) => {
        const path = `versions/${id}/${version.id}.halfstop`;
        files[path] = strToU8(version.text);
        return { id: version.id, file: path, entry: version.entry };
      }),
    };
  });
  // Photos are packed already.
  for (const { name, bytes } of beside) files[`beside/${name}`] = [bytes, { level: 0 }];
  files[list] = strToU8(JSON.stringify({ form, version: 1, made, books: listed }, null, 1));
  return zipSync(files, { mtime: made }) as Uint8Array<ArrayBuffer>;
}

/** A name that every file system takes. */
export const fileName = (title: string): string =>
  title
    .replace(/[^\p{L}\p{N} _-]+/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .slice(0, 60) || words.files.untitled;

/** The archive in a file, every book of it looked over; or one sentence that says what is wrong. */
export function readArchive(
  bytes: Uint8Array,
): { readonly ok: true; readonly archive: Archive } | Refusal {
  try {
    const files = unpacked(bytes);
    const json = listIn(files);
    const text = (path: Json | undefined): string => {
      const file = typeof path === 'string' ? files.get(path) : undefined;
      if (!file) throw new Unreadable(words.archive.lacksFile);
      const content = strFromU8(file);
      const read = readBook(content);
      if (!read.ok) throw new Unreadable(words.archive.bookDamaged(read.reason));
      return content;
    };
    const books = objects(json['books']).map((book): ArchivedBook => ({
      id: idIn(book),
      title: typeof book['title'] === 'string' ? book['title'] : '',
      text: text(book['file']),
      entry: entryIn(book),
      versions: objects(book['versions']).map((version) => ({
        id: idIn(version),
        text: text(version['file']),
        entry: entryIn(version),
      })),
    }));
    const beside = [...files].flatMap(([path, content]) =>
      path.startsWith('beside/') ? [{ name: path.slice('beside/'.length), bytes: content }] : [],
    );
    return { ok: true, archive: { made: String(json['made']), books, beside } };
  } catch (fault) {
    const said = fault instanceof Unreadable || fault instanceof Refused;
    const reason = said ? fault.message.replace(/\.$/, '') : words.archive.noArchive;
    return { ok: false, reason: words.archive.nothingTaken(reason) };
  }
}

class Unreadable extends Error {}

type Files = ReadonlyMap<string, Uint8Array>;

function unpacked(bytes: Uint8Array): Files {
  if (bytes.length > mostBytes) throw new Unreadable(words.archive.larger);
  return unzip(bytes, () => true, limits).parts;
}

function listIn(files: Files): Entry {
  const file = files.get(list);
  const json = (file ? JSON.parse(strFromU8(file)) : {}) as Entry;
  if (json['form'] !== form) throw new Unreadable(words.archive.noArchive);
  if (json['version'] !== 1) throw new Unreadable(words.archive.newer);
  return json;
}

function objects(json: Json | undefined): readonly Entry[] {
  if (!Array.isArray(json)) throw new Unreadable(words.archive.listDamaged);
  return (json as readonly Json[]).map((item) => {
    if (typeof item !== 'object' || item === null || Array.isArray(item))
      throw new Unreadable(words.archive.listDamaged);
    return item as Entry;
  });
}

function idIn(item: Entry): string {
  const { id } = item;
  if (typeof id !== 'string' || !/^[\w-]{1,40}$/.test(id))
    throw new Unreadable(words.archive.listDamaged);
  return id;
}

const entryIn = (item: Entry): Entry => {
  const { entry } = item;
  return typeof entry === 'object' && entry !== null && !Array.isArray(entry)
    ? (entry as Entry)
    : {};
};
