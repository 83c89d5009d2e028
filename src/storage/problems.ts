import { words } from '../words/words.ts';

export type ProblemKind = 'full' | 'forbidden' | 'failed' | 'elsewhere' | 'cleared' | 'newer';

/** What is said while a book is open. */
const sentences: Readonly<Record<ProblemKind, string>> = {
  full: words.storage.full,
  forbidden: words.storage.forbidden,
  failed: words.storage.failed,
  elsewhere: words.storage.elsewhere,
  cleared: words.storage.cleared,
  newer: words.storage.newer,
};

/** What is said where no book is open yet. */
const sentencesAtStart: Readonly<Record<ProblemKind, string>> = {
  full: words.storage.fullAtStart,
  forbidden: words.storage.forbiddenAtStart,
  failed: words.storage.failedAtStart,
  elsewhere: words.storage.elsewhereAtStart,
  cleared: words.storage.clearedAtStart,
  newer: words.storage.newerAtStart,
};

/** Why storage did not do what was asked, in a sentence that says what is still safe. */
export class StorageProblem extends Error {
  readonly kind: ProblemKind;

  constructor(kind: ProblemKind, cause?: unknown) {
    super(sentences[kind], { cause });
    this.kind = kind;
  }

  get atStart(): string {
    return sentencesAtStart[this.kind];
  }
}

/** By the names that the standard of IndexedDB gives errors. */
const kinds: Readonly<Record<string, ProblemKind>> = {
  QuotaExceededError: 'full',
  SecurityError: 'forbidden',
  InvalidStateError: 'forbidden',
  NotAllowedError: 'forbidden',
  VersionError: 'newer',
};

/** The browser's own error as one of ours. */
export function problem(cause: unknown): StorageProblem {
  if (cause instanceof StorageProblem) return cause;
  return new StorageProblem(kinds[nameOf(cause)] ?? 'failed', cause);
}

export const nameOf = (cause: unknown): string =>
  cause instanceof Error || cause instanceof DOMException ? cause.name : '';
