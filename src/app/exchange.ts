import type { Refusal } from '../book/types.ts';
import type { ExchangeAnswer, ExchangeTask } from './exchange-work.ts';
import { longWork, type LongWork } from './long-work.ts';
import { words } from '../words/words.ts';

type Finished = Exclude<ExchangeAnswer, { kind: 'progress' | 'refused' }>;

export type Exchanging<Result> = LongWork<Result | Refusal>;

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
  // The worker answers each task with its own kind of result, or refuses it.
  return longWork<ExchangeAnswer, Refusal>(worker, task, progress, {
    stopped,
    failed,
  }) as Exchanging<ResultOf<Task>>;
}
