import { StorageProblem } from '../storage/problems.ts';
import { apart } from './apart.ts';
import type { VersionsAnswer, VersionsJob } from './versions-work.ts';

/** Keeps or compares versions on a thread of its own: a long book takes seconds to read and write. */
export async function versionsApart(job: VersionsJob): Promise<VersionsAnswer> {
  const worker = new Worker(new URL('./versions.worker.ts', import.meta.url), { type: 'module' });
  const answer = await apart<VersionsAnswer>(worker, job);
  if ('problem' in answer) throw new StorageProblem(answer.problem);
  return answer;
}
