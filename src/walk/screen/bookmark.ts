import type { Place } from '../../book/types.ts';

/** Where a walk was when the phone went to sleep, and what was half entered. */
export interface Bookmark {
  readonly book: string;
  readonly place: Place;
  readonly draft: string | null;
  /** Readings gone past, by row and column. */
  readonly skipped: readonly string[];
}

const key = 'halfstop-walk';

export function putBookmark(bookmark: Bookmark | null): void {
  try {
    if (bookmark) localStorage.setItem(key, JSON.stringify(bookmark));
    else localStorage.removeItem(key);
  } catch {
    // Storage is forbidden here: a reload begins at the sheet.
  }
}

/** The bookmark in this book; undefined where there is none, or none that can be read. */
export function bookmarkIn(book: string): Bookmark | undefined {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(key) ?? 'null');
    return isBookmark(read) && read.book === book ? read : undefined;
  } catch {
    return undefined;
  }
}

function isBookmark(read: unknown): read is Bookmark {
  const { book, place, draft, skipped } = (read ?? {}) as Partial<Record<keyof Bookmark, unknown>>;
  const { sheet, row, column } = (place ?? {}) as Partial<Record<keyof Place, unknown>>;
  const texts = [book, sheet, row, column, draft ?? ''];
  return (
    texts.every((text) => typeof text === 'string') &&
    Array.isArray(skipped) &&
    skipped.every((text) => typeof text === 'string')
  );
}
