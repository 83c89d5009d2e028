import { writeBook } from '../book/form/write.ts';
import { openDatabase } from '../storage/database.ts';
import { keepVersion, type ToKeep } from '../storage/keepversion.ts';
import { readPages } from '../storage/pages.ts';
import type { BookStore } from '../storage/store.ts';
import type { KeptVersion } from '../storage/versions.ts';
import { problem, type ProblemKind } from '../storage/problems.ts';
import { changesInShort, compare } from './comparison.ts';
import { words } from '../words/words.ts';

/** What is asked of the worker. The present state of a book is `null` where a version is named. */
export type VersionsJob =
  | ({ readonly job: 'keep' } & Omit<ToKeep, 'text'> & {
        /** Where it is left out, the book as it is kept now. */
        readonly text?: string;
      })
  | {
      readonly job: 'compare';
      readonly book: string;
      readonly before: string;
      readonly after: string | null;
    };

export type VersionsAnswer =
  | { readonly kept: KeptVersion | null }
  | { readonly comparison: ReturnType<typeof compare> }
  | { readonly problem: ProblemKind };

export function take(job: VersionsJob): void {
  const store = openDatabase();
  void answer(store, job)
    .catch((cause: unknown): VersionsAnswer => ({ problem: problem(cause).kind }))
    .then((found) => {
      store.close();
      postMessage(found);
    });
}

async function answer(store: BookStore, job: VersionsJob): Promise<VersionsAnswer> {
  if (job.job === 'keep') {
    const { job: _, ...wanted } = job;
    const text = job.text ?? (await textOf(store, job.book, null));
    return {
      kept: (await keepVersion(store.versions, { ...wanted, text }, changesInShort)) ?? null,
    };
  }
  const before = await textOf(store, job.book, job.before);
  return { comparison: compare(before, await textOf(store, job.book, job.after)) };
}

/** A version as it was kept, or the book as it is kept now. */
async function textOf(store: BookStore, book: string, version: string | null): Promise<string> {
  if (version !== null) {
    const text = await store.versions.text(book, version);
    if (text !== undefined) return text;
    throw new Error(words.versions.versionGone);
  }
  const pages = await store.read(book);
  const read = pages && readPages(pages);
  if (!read?.ok) throw new Error(words.versions.unreadable);
  return writeBook(read.book.document);
}
