import { writeBook } from '../book/form/write.ts';
import type { Class } from '../book/exercises.ts';
import type { Document, Means } from '../book/types.ts';
import type { Outcome } from '../commands/command.ts';
import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';
import type { LayPage } from '../teach/screen/pages.ts';
import type { TeachDone, TeachTask } from '../teach/work.ts';
import { words } from '../words/words.ts';
import { longWork, type LongWork } from './long-work.ts';
import type { TeachAnswer } from './teach.worker.ts';
import type { Desk } from './desk.ts';

export interface TeachHands {
  readonly means: Means;
  readonly now: () => Date;
  desk(): Desk | null;
  tell(outcome: Outcome): void;
  print(title: string, pages: readonly LayPage[]): Promise<Outcome>;
}

type Refused = Extract<TeachDone, { kind: 'refused' }>;
type Job = TeachTask extends infer One ? Omit<One & TeachTask, 'book' | 'klass'> : never;
type DoneOf<One extends Job> = Extract<TeachDone, { kind: One['kind'] }> | Refused;

const stopped: Refused = { kind: 'refused', reason: words.exchange.stopped };
const failed: Refused = { kind: 'refused', reason: words.app.threadBroke };

/** Does one long work at a time for a whole class, on a thread of its own. */
export interface ClassWork {
  /** From 0 to 1; null where nothing is done. */
  readonly progress: ReadonlySignal<number | null>;
  start<One extends Job>(document: Document, klass: Class, job: One): Promise<DoneOf<One>>;
  cancel(): void;
}

export function classWork(): ClassWork {
  const progress = signal<number | null>(null);
  let working: LongWork<TeachDone> | undefined;
  return {
    progress,
    async start<One extends Job>(document: Document, klass: Class, job: One) {
      working?.cancel();
      const worker = new Worker(new URL('./teach.worker.ts', import.meta.url), { type: 'module' });
      const task = { ...job, klass, book: writeBook(document) };
      progress.value = 0;
      const own = longWork<TeachAnswer, Refused>(
        worker,
        task,
        (share) => (progress.value = share),
        { stopped, failed },
      );
      working = own;
      const done = await own.result;
      if (working === own) progress.value = null;
      // The worker answers each job with its own kind of result, or refuses it.
      return done as DoneOf<One>;
    },
    cancel: () => working?.cancel(),
  };
}
