import { lineKind, replay, type Stopped } from '../book/form/journal.ts';
import { readBase, writeBase } from '../book/form/remains.ts';
import { writeBook } from '../book/form/write.ts';
import type { Book, Refusal } from '../book/types.ts';
import { cutPoint } from './cutPoint.ts';
import type { KeptPages } from './store.ts';
import type { Snapshot } from './kept.ts';
import { words } from '../words/words.ts';

export interface ReadPages {
  readonly ok: true;
  readonly book: Book;
  /** The last line was only half written and is left out. */
  readonly cutShort: boolean;
}

/** The book that pages tell, with its history. Pages that are `Stopped` tell the first part of it. */
export function readPages({ snapshot, journal }: KeptPages): ReadPages | Refusal | Stopped {
  try {
    const base = readBase(snapshot);
    return base.ok ? replay(base.document, journal) : base;
  } catch {
    // Only by damage do pages come to say what no book of ours ever did.
    return { ok: false, reason: words.storage.damaged };
  }
}

/** Everything as it lies there, readable or not: the book’s file, then the journal line by line. */
export const rawText = ({ snapshot: { text, remains }, journal }: KeptPages): string =>
  [text, ...(remains === null ? [] : [remains]), ...journal].join('\n');

export interface Folded {
  readonly snapshot: Snapshot;
  /** How many of the first lines it stands for. */
  readonly lines: number;
}

/**
 * Makes a snapshot that stands for the first lines too, so that the last `keep` at least can still
 * be undone. `undefined` when there is nothing to fold, or when anything would come out otherwise
 * than before: the pages are then best left as they are.
 */
export function foldPages(pages: KeptPages, keep: number): Folded | undefined {
  const lines = cutPoint(pages.journal.map(lineKind), keep);
  const whole = lines === 0 ? undefined : textOf(pages);
  if (whole === undefined) return undefined;
  const snapshot = baseOf({ ...pages, journal: pages.journal.slice(0, lines) });
  const rest = pages.journal.slice(lines);
  return snapshot && textOf({ snapshot, journal: rest }) === whole
    ? { snapshot, lines }
    : undefined;
}

// Each book is let go of once it is text: large ones are not held side by side.

function textOf(pages: KeptPages): string | undefined {
  const read = readPages(pages);
  return read.ok ? writeBook(read.book.document) : undefined;
}

function baseOf(pages: KeptPages): Snapshot | undefined {
  const read = readPages(pages);
  return read.ok && !read.cutShort ? writeBase(read.book.document) : undefined;
}
