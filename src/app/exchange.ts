import type { Refusal } from '../book/types.ts';
import type { ExchangeAnswer, ExchangeTask } from './exchange.worker.ts';
import { words } from '../words/words.ts';

type Finished = Exclude<ExchangeAnswer, { kind: 'progress' | 'refused' }>;

/** Work on a thread of its own, which ends with it. */
export interface Exchanging<Result> {
  readonly result: Promise<Result | Refusal>;
  cancel(): void;
}

type ResultOf<Task extends ExchangeTask> = Task extends { kind: 'read' }
  ? Extract<Finished, { kind: 'read' }>
  : Extract<Finished, { kind: 'written' }>;

const stopped: Refusal = { ok: false, reason: words.exchange.stopped };
const failed: Refusal = {
  ok: false,
  reason: words.exchange.tooMuch,
};

/** Reads or writes a file of another program apart from the page. */
export function exchange<Task extends ExchangeTask>(
  task: Task,
  progress: (share: number) => void,
): Exchanging<ResultOf<Task>> {
  const worker = new Worker(new URL('./exchange.worker.ts', import.meta.url), { type: 'module' });
  let stop = (): void => undefined;
  const result = new Promise<ResultOf<Task> | Refusal>((resolve) => {
    const end = (outcome: ResultOf<Task> | Refusal) => {
      worker.terminate();
      resolve(outcome);
    };
    stop = () => end(stopped);
    worker.addEventListener('message', ({ data }: MessageEvent<ExchangeAnswer>) => {
      if (data.kind === 'progress') progress(data.share);
      else if (data.kind === 'refused') end({ ok: false, reason: data.reason });
      // The worker answers each task with its own kind of result.
      else end(data as ResultOf<Task>);
    });
    worker.addEventListener('error', () => end(failed));
    worker.postMessage(task);
  });
  return { result, cancel: () => stop() };
}
