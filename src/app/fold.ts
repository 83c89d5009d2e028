import type { FoldedAway } from '../storage/folding.ts';
import { apart } from './apart.ts';
import type { FoldAnswer } from './fold-work.ts';

/** Folds the journal of a kept book on a thread of its own. */
export async function foldApart(id: string): Promise<FoldedAway | undefined> {
  const worker = new Worker(new URL('./fold.worker.ts', import.meta.url), { type: 'module' });
  return (await apart<FoldAnswer>(worker, id)) ?? undefined;
}
