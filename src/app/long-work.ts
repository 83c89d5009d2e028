import { asked } from './apart.ts';
import type { Progress } from './work-off.ts';

/** Work on a thread of its own, which ends with it. */
export interface LongWork<Done> {
  readonly result: Promise<Done>;
  cancel(): void;
}

/**
 * Has a worker do something long: it tells how far it is, and at last what it came to. `stopped` is
 * what it came to if it was cancelled, `failed` if the thread broke.
 */
export function longWork<Answer extends { readonly kind: string }, Ended>(
  worker: Worker,
  task: unknown,
  progress: (share: number) => void,
  endings: { readonly stopped: Ended; readonly failed: Ended },
): LongWork<Exclude<Answer, Progress> | Ended> {
  type Done = Exclude<Answer, Progress> | Ended;
  let stop = (): void => undefined;
  const result = new Promise<Done>((resolve) => {
    const end = (outcome: Done) => {
      worker.terminate();
      resolve(outcome);
    };
    stop = () => end(endings.stopped);
    worker.addEventListener('message', ({ data }: MessageEvent<Answer | Progress>) => {
      if (data.kind === 'progress') progress((data as Progress).share);
      else end(data as Exclude<Answer, Progress>);
    });
    worker.addEventListener('error', () => end(endings.failed));
    worker.postMessage(asked(task));
  });
  return { result, cancel: () => stop() };
}
