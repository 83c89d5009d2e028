import type { Base } from '../book/form/remains.ts';

/** A book as the list of kept books shows it. */
export interface KeptBook {
  readonly id: string;
  readonly title: string;
  /** When it last changed, as an ISO 8601 instant. */
  readonly changed: string;
  /** Characters of the snapshot and the journal together. */
  readonly size: number;
}

export type Snapshot = Base;

/** A book as it lies in storage: a whole one from some moment, and all that was done to it since. */
export interface KeptPages {
  readonly snapshot: Snapshot;
  readonly journal: readonly string[];
}

export interface ReadFromStore extends KeptPages {
  /** The number of the last line that the snapshot stands for. */
  readonly upTo: number;
}

/**
 * Where books are kept on this device. Each call either happens whole or rejects with a
 * `StorageProblem`, and then what was kept before is still there.
 */
export interface BookStore {
  list(): Promise<readonly KeptBook[]>;
  read(id: string): Promise<ReadFromStore | undefined>;
  /** Keeps a book whole, in place of what was kept of it. Only `writer` may append from then on. */
  begin(book: KeptBook, pages: KeptPages, writer: string): Promise<void>;
  /** From now on only `writer` may append. A last line that was cut short is taken away. */
  claim(id: string, writer: string, cutShort: boolean): Promise<void>;
  /** Rejects as `elsewhere` for any but the writer, as `cleared` when the book is not there. */
  append(book: KeptBook, lines: readonly string[], writer: string): Promise<void>;
  /**
   * Puts a newer snapshot in place of the one that stands up to line `upTo`, and of the first
   * `lines` lines after it. False, and nothing done, if the pages are no longer those.
   */
  fold(id: string, upTo: number, snapshot: Snapshot, lines: number): Promise<boolean>;
  remove(id: string): Promise<void>;
  close(): void;
}

/** Characters of these pages. */
export function sizeOf({ snapshot, journal }: KeptPages): number {
  return snapshot.text.length + (snapshot.remains?.length ?? 0) + lengthOf(journal);
}

export const lengthOf = (lines: readonly string[]): number =>
  lines.reduce((sum, line) => sum + line.length, 0);
