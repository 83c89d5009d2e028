/** A book as the list of kept books shows it. */
export interface KeptBook {
  readonly id: string;
  readonly title: string;
  /** When it last changed, as an ISO 8601 instant. */
  readonly changed: string;
  /** Characters of the snapshot and the journal together. */
  readonly size: number;
}

/** A book as it lies in storage: a whole one from some moment, and all that was done to it since. */
export interface KeptPages {
  readonly snapshot: string;
  readonly journal: readonly string[];
}

/**
 * Where books are kept on this device. Each call either happens whole or rejects with a
 * `StorageProblem`, and then what was kept before is still there.
 */
export interface BookStore {
  list(): Promise<readonly KeptBook[]>;
  read(id: string): Promise<KeptPages | undefined>;
  /** Keeps a book from its first page on, or puts a new snapshot in place of snapshot and journal. */
  begin(book: KeptBook, snapshot: string): Promise<void>;
  append(book: KeptBook, lines: readonly string[]): Promise<void>;
  /** Puts a newer snapshot in place of the old one and of the first `lines` journal lines. */
  fold(id: string, snapshot: string, lines: number): Promise<void>;
  remove(id: string): Promise<void>;
  close(): void;
}

export type ProblemKind = 'full' | 'forbidden' | 'failed';

const sentences: Readonly<Record<ProblemKind, string>> = {
  full: 'This device has no room left for the book. Your changes are still here: save the book to a file, then make room.',
  forbidden:
    'This browser does not let the book be kept on the device. Your changes are still here: save the book to a file before you close this page.',
  failed:
    'The book could not be kept on this device. Your changes are still here: save the book to a file.',
};

/** Why storage did not do what was asked, in a sentence that says what is still safe. */
export class StorageProblem extends Error {
  readonly kind: ProblemKind;

  constructor(kind: ProblemKind, cause?: unknown) {
    super(sentences[kind], { cause });
    this.kind = kind;
  }
}

const kinds: Readonly<Record<string, ProblemKind>> = {
  QuotaExceededError: 'full',
  SecurityError: 'forbidden',
  InvalidStateError: 'forbidden',
  NotAllowedError: 'forbidden',
};

/** The browser's own error as one of ours. */
export function problem(cause: unknown): StorageProblem {
  if (cause instanceof StorageProblem) return cause;
  const name = cause instanceof Error || cause instanceof DOMException ? cause.name : '';
  return new StorageProblem(kinds[name] ?? 'failed', cause);
}
