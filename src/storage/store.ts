import type { KeptBook, Snapshot } from './kept.ts';
import type { PhotoStore } from './photostore.ts';
import type { VersionStore } from './versionstore.ts';

/** A book as it lies in storage: a whole one from some moment, and all that was done to it since. */
export interface KeptPages {
  readonly snapshot: Snapshot;
  readonly journal: readonly string[];
}

export interface ReadFromStore extends KeptPages {
  /** The number of the last line that the snapshot stands for. */
  readonly upTo: number;
  /** The number of each line of the journal; they grow. */
  readonly numbers: readonly number[];
  /** The highest number that is taken. */
  readonly last: number;
}

/**
 * Where books are kept on this device. Each call either happens whole or rejects with a
 * `StorageProblem`, and then what was kept before is still there.
 */
export interface BookStore {
  /** The last changed first; those in the bin too. */
  list(): Promise<readonly KeptBook[]>;
  read(id: string): Promise<ReadFromStore | undefined>;
  /** Keeps a book whole, its lines numbered from 1, in place of what was kept of it. */
  begin(book: KeptBook, pages: KeptPages): Promise<void>;
  /**
   * Takes the number after `last`, so that no tab that read the book before can append: numbers are
   * given once. A last line that was cut short is taken away. Rejects as `append` does.
   */
  claim(id: string, last: number, cutShort: boolean): Promise<void>;
  /**
   * Adds lines with the numbers after `last`. A crash of the browser spares them from then on, a
   * power cut once they are settled. Rejects as `elsewhere` when another tab has taken the numbers,
   * as `cleared` when the book is not there.
   */
  append(book: KeptBook, lines: readonly string[], last: number): Promise<void>;
  /** Waits until all that was appended lies on the disk itself. */
  settle(book: KeptBook): Promise<void>;
  /**
   * Puts a newer snapshot in place of the one that stands up to line `upTo`, and of the lines up to
   * number `through`. False, and nothing done, if the snapshot is no longer that one.
   */
  fold(id: string, upTo: number, snapshot: Snapshot, through: number): Promise<boolean>;
  /** Puts a book in the bin, or takes it out again (`null`). */
  bin(id: string, when: string | null): Promise<void>;
  /** Takes a book away for good, with its versions and photos. */
  remove(id: string): Promise<void>;
  readonly versions: VersionStore;
  readonly photos: PhotoStore;
  close(): void;
}

/** Characters of these pages. */
export function sizeOf({ snapshot, journal }: KeptPages): number {
  return snapshot.text.length + (snapshot.remains?.length ?? 0) + lengthOf(journal);
}

export const lengthOf = (lines: readonly string[]): number =>
  lines.reduce((sum, line) => sum + line.length, 0);
