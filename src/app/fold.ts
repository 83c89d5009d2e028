import type { FoldedAway } from '../storage/folding.ts';
import type { FoldAnswer } from './fold.worker.ts';

/** Folds the journal of a kept book on a thread of its own. */
export function foldApart(id: string): Promise<FoldedAway | undefined> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL('./fold.worker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', ({ data }: MessageEvent<FoldAnswer>) => {
      worker.terminate();
      resolve(data ?? undefined);
    });
    worker.addEventListener('error', () => {
      worker.terminate();
      reject(new Error('The journal was not folded.'));
    });
    worker.postMessage(id);
  });
}
