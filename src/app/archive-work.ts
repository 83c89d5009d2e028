import { readArchive, writeArchive } from '../files/archive.ts';
import { openDatabase } from '../storage/database.ts';
import { problem, type ProblemKind } from '../storage/problems.ts';
import type { BookStore } from '../storage/store.ts';
import { gather, merge, type TakenIn } from './archiving.ts';
import { newId } from './means.ts';

export type ArchiveJob =
  { readonly job: 'write'; readonly made: string } | { readonly job: 'read'; readonly file: File };

export type ArchiveAnswer =
  | {
      readonly bytes: Uint8Array<ArrayBuffer>;
      readonly books: number;
      readonly unreadable: readonly string[];
    }
  | { readonly taken: TakenIn }
  | { readonly reason: string }
  | { readonly problem: ProblemKind };

export function take(job: ArchiveJob): void {
  const store = openDatabase();
  void answer(store, job)
    .catch((cause: unknown): ArchiveAnswer => ({ problem: problem(cause).kind }))
    .then((found) => {
      store.close();
      postMessage(found);
    });
}

async function answer(store: BookStore, job: ArchiveJob): Promise<ArchiveAnswer> {
  if (job.job === 'write') {
    const { archive, unreadable } = await gather(store, job.made);
    return { bytes: writeArchive(archive), books: archive.books.length, unreadable };
  }
  const read = readArchive(new Uint8Array(await job.file.arrayBuffer()));
  return read.ok ? { taken: await merge(store, read.archive, newId) } : { reason: read.reason };
}
