import { createBook } from '../book.ts';
import type { Book, Change, Document, Refusal } from '../types.ts';
import { lineFromText, lineToText } from './stepjson.ts';
import { words } from '../../words/words.ts';

/** One line of JSON for a change: append it, and the journal tells how the book came about. */
export const journalLine = (change: Pick<Change, 'kind' | 'transaction'>): string =>
  lineToText(change);

export interface Replayed {
  readonly ok: true;
  /** With its history: what the journal did can be undone. */
  readonly book: Book;
  /** The last line was cut short, as when a write was cut off, and is left out. */
  readonly cutShort: boolean;
}

/** A journal that cannot be done again to its end. */
export interface Stopped extends Refusal {
  /** How many lines could be done. */
  readonly done: number;
}

/** What a line did to the history; what cannot be read counts as something new. */
export function lineKind(text: string): Change['kind'] {
  if (text === '{"kind":"undo"}') return 'undo';
  if (text.startsWith('{"kind":"follow"')) return 'follow';
  return text === '{"kind":"redo"}' ? 'redo' : 'do';
}

/**
 * Does again what a journal says, on the document that it began with. A line in the middle that
 * cannot be read or done stops it with a sentence; nothing of the book is handed out then.
 */
export function replay(document: Document, lines: readonly string[]): Replayed | Stopped {
  const book = createBook(document);
  for (const [index, text] of lines.entries()) {
    const line = lineFromText(text);
    if ('reason' in line) {
      if (line.cutShort && index === lines.length - 1) return { ok: true, book, cutShort: true };
      return stopped(index, line.reason);
    }
    if ('transaction' in line) {
      const { transaction } = line;
      const result = line.kind === 'do' ? book.run(transaction) : book.follow(transaction.steps);
      if (!result.ok) return stopped(index, result.reason);
    } else if (!book[line.kind]()) return stopped(index, words.book.nothingTo(line.kind));
  }
  return { ok: true, book, cutShort: false };
}

function stopped(index: number, reason: string): Stopped {
  const at = String(index + 1);
  return { ok: false, reason: words.bookFile.stopsAt(at, reason), done: index };
}
