import type { Outcome } from '../commands/command.ts';
import { StorageProblem } from '../storage/problems.ts';
import { apart } from './apart.ts';
import type { ArchiveAnswer, ArchiveJob } from './archive.worker.ts';
import { saveFile } from './file-dialog.ts';

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
  saveFile(`Halfstop archive ${made.slice(0, 10)}`, 'zip', 'application/zip', bytes);
  const left =
    unreadable.length > 0
      ? ` Left out, because they cannot be read: ${unreadable.join(', ')}.`
      : '';
  return {
    ok: true,
    say: `Saved ${counted(books)} with their versions as an archive. The undo history is not in it.${left}`,
  };
}

/** Takes in the books of an archive; nothing that is here is overwritten. */
export async function takeArchive(file: File): Promise<Outcome> {
  const answer = await ask({ job: 'read', bytes: new Uint8Array(await file.arrayBuffer()) });
  if (!('taken' in answer)) return failed(answer);
  const { added, beside, same } = answer.taken;
  const said = [
    ...(added > 0 ? [`${counted(added)} taken in`] : []),
    ...(beside > 0
      ? [`${counted(beside)} taken in beside the one that is here in another state`]
      : []),
    ...(same > 0 ? [`${counted(same)} here already`] : []),
  ];
  return { ok: true, say: said.length > 0 ? `${said.join(', ')}.` : 'The archive is empty.' };
}

const counted = (count: number) => (count === 1 ? '1 book' : `${String(count)} books`);
