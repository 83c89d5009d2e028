import type { FoldedAway } from '../storage/folding.ts';

/** Folds a journal in a worker, which ends when it is done. */
export function foldElsewhere(id: string): Promise<FoldedAway | undefined> {
  const worker = new Worker(new URL('./fold-worker.ts', import.meta.url), { type: 'module' });
  return new Promise<FoldedAway | undefined>((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<FoldedAway | undefined>) =>
      resolve(data),
    );
    worker.addEventListener('error', ({ message }) => reject(new Error(message)));
    worker.postMessage(id);
  }).finally(() => worker.terminate());
}
