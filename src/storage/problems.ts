export type ProblemKind = 'full' | 'forbidden' | 'failed' | 'elsewhere' | 'cleared' | 'newer';

/** What is said while a book is open. */
const sentences: Readonly<Record<ProblemKind, string>> = {
  full: 'This device has no room left for the book. Your changes are still here: save the book to a file, then make room.',
  forbidden:
    'This browser does not let the book be kept on the device. Your changes are still here: save the book to a file before you close this page.',
  failed:
    'The book could not be kept on this device. Your changes are still here: save the book to a file.',
  elsewhere:
    'This book is open in another tab, and only one tab can keep it. Close it there and reload this page; if you have changed anything here, save the book to a file first.',
  cleared:
    'What this browser kept of the book has been cleared. Your changes are still here and are kept again in a moment.',
  newer:
    'A newer Halfstop is open in another tab. Your changes are still here: save the book to a file, then reload this page.',
};

/** What is said where no book is open yet. */
const sentencesAtStart: Readonly<Record<ProblemKind, string>> = {
  full: 'This device has no room left for books. You can work all the same: save the book to a file before you close the page.',
  forbidden:
    'This browser does not let books be kept on the device. You can work all the same: save the book to a file before you close the page.',
  failed:
    'The books kept on this device cannot be reached now. You can work all the same: save the book to a file before you close the page.',
  elsewhere: 'This book is open in another tab. Close it there first.',
  cleared: 'What this browser kept of the book has been cleared.',
  newer: 'A newer Halfstop is open in another tab. Reload this page.',
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
