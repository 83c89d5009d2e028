import type { Means } from '../book/types.ts';
import type { Ground } from '../choose/plans.ts';
import type { Done, Task } from '../choose/work.ts';
import type { Outcome } from '../commands/command.ts';
import { words } from '../words/words.ts';
import type { ChooseAnswer } from './choose.worker.ts';
import type { Desk } from './desk.ts';
import { longWork, type LongWork } from './long-work.ts';

export interface ChooseHands {
  readonly means: Means;
  desk(): Desk | null;
  tell(outcome: Outcome): void;
}

export type Choosing = LongWork<Exclude<ChooseAnswer, { kind: 'progress' }>>;

const stopped: Done = { kind: 'refused', reason: words.exchange.stopped };
export const failed = { kind: 'refused', reason: words.app.threadBroke } as const;

/** Tries things on a copy of the book, on a thread of their own. */
export function apart(task: Task, progress: (share: number) => void): Choosing {
  const worker = new Worker(new URL('./choose.worker.ts', import.meta.url), { type: 'module' });
  return longWork<ChooseAnswer, Done>(worker, task, progress, { stopped, failed });
}

export function groundOf(means: Means, { context, book, session }: Desk): Ground {
  return {
    document: book.document,
    engine: context.engine,
    means,
    shown: session.state.sheet,
  };
}
