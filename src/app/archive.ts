import type { Outcome } from '../commands/command.ts';
import { StorageProblem } from '../storage/problems.ts';
import { apart } from './apart.ts';
import type { ArchiveAnswer, ArchiveJob } from './archive-work.ts';
import { saveFile } from './file-dialog.ts';
import { words } from '../words/words.ts';

const ask = (job: ArchiveJob): Promise<ArchiveAnswer> =>
  apart(new Worker(new URL('./archive.worker.ts', import.meta.url), { type: 'module' }), job);

const failed = (answer: ArchiveAnswer): Outcome => ({
  ok: false,
  reason:
    'reason' in answer
      ? answer.reason
      : new StorageProblem('problem' in answer ? answer.problem : 'failed').atStart,
});

/** Saves every book of this device, with its versions, as one file. */
export async function saveArchive(now: Date): Promise<Outcome> {
  const made = now.toISOString();
  const answer = await ask({ job: 'write', made });
  if (!('bytes' in answer)) return failed(answer);
  const { bytes, books, unreadable } = answer;
  saveFile(words.archive.fileName(made.slice(0, 10)), 'zip', 'application/zip', bytes);
  const say =
    unreadable.length > 0
      ? words.archive.savedWithout(books, unreadable.join(', '))
      : words.archive.saved(books);
  return { ok: true, say };
}

/** Takes in the books of an archive; nothing that is here is overwritten. */
export async function takeArchive(file: File): Promise<Outcome> {
  const answer = await ask({ job: 'read', file });
  if (!('taken' in answer)) return failed(answer);
  const { added, beside, same } = answer.taken;
  const some = added + beside + same > 0;
  return { ok: true, say: some ? words.archive.taken(added, beside, same) : words.archive.empty };
}
