import { readEntry } from '../../functions/quantities/entry.ts';
import { createBook } from '../book/book.ts';
import { readBook } from '../book/form/read.ts';
import type { Spot } from '../book/look.ts';
import { enter } from '../book/make/enter.ts';
import { newDocument } from '../book/newdocument.ts';
import { writingSettings } from '../book/settings.ts';
import type { Document, Means, Settings } from '../book/types.ts';
import { isFunction } from '../engine/index.ts';
import { readTable, split } from '../files/table.ts';
import { words } from '../words/words.ts';
import { Unusable, type Io } from './types.ts';

export interface OpenFile {
  readonly document: Document;
  /** Cells of a table that could not be read, with the reason. */
  readonly unread: readonly (Spot & { readonly reason: string })[];
}

/** Ids are told apart within one book only, so counted ones will do. */
export function countingMeans(): Means {
  let count = 0;
  return {
    newId: () => `i${String(++count)}`,
    isFunction,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
  };
}

/** A book with one empty sheet. */
export function emptyDocument(settings: Partial<Settings>): Document {
  return newDocument(countingMeans(), { settings });
}

/** A book, or a table of texts and formulas that becomes the only sheet of one. */
export async function openFile(path: string, io: Io): Promise<OpenFile> {
  const text = decoded(await contentOf(path, io));
  if (!/^\uFEFF?\s*\{/.test(text)) return fromTable(path, text);
  const read = readBook(text);
  if (!read.ok) throw new Unusable(`${path}: ${read.reason}`);
  return { document: read.document, unread: [] };
}

export async function contentOf(path: string, io: Io): Promise<Uint8Array> {
  try {
    return await io.readFile(path);
  } catch {
    throw new Unusable(words.commandLine.unreadable(path));
  }
}

/** Older programs write tables in the alphabet of western Windows. */
function decoded(content: Uint8Array): string {
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(content);
  } catch {
    return new TextDecoder('windows-1252').decode(content);
  }
}

function fromTable(path: string, text: string): OpenFile {
  if (text.includes('\0')) throw new Unusable(words.commandLine.neither(path));
  const { rows, decimal } = readTable(text) ?? {
    rows: split(text.replace(/^\uFEFF/, ''), ','),
    decimal: '.' as const,
  };
  const means = countingMeans();
  const name = path.replace(/^.*[/\\]/, '').replace(/\.[^.]*$/, '');
  const document = newDocument(means, { settings: { decimal } });
  const [sheet] = document.sheets;
  if (!sheet) throw new Unusable(words.commandLine.withoutSheet(name));
  const entries = rows.flatMap((cells, row) =>
    cells.flatMap((cell, column) =>
      cell === '' ? [] : [{ sheet: sheet.id, row, column, text: cell }],
    ),
  );
  const made = enter(document, means, entries, { keepGoing: true });
  if (!made.ok) throw new Unusable(`${path}: ${made.reason}`);
  const ran = createBook(document).run(made.transaction);
  if (!ran.ok) throw new Unusable(`${path}: ${ran.reason}`);
  return { document, unread: made.unread };
}
