import { readBook } from '../book/form/read.ts';
import type { Spot } from '../book/look.ts';
import type { EngineOptions } from '../engine/types.ts';
import { pick, type Patience, type Picked } from './pick/pick.ts';
import type { Problem } from './pick/problem.ts';
import { solve, type Answers, type Search } from './solve.ts';
import { sweep, type Sweep, type Swept } from './sweep.ts';
import { trialOf } from './trial.ts';

/** What is tried on a copy of the book, apart from the page. */
export type Task =
  | {
      readonly kind: 'solve';
      /** The text of its file. */
      readonly book: string;
      readonly changing: Spot;
      readonly result: Spot;
      readonly search: Search;
    }
  | { readonly kind: 'sweep'; readonly book: string; readonly plan: Sweep }
  | { readonly kind: 'pick'; readonly problem: Problem };

export type Done =
  | { readonly kind: 'solved'; readonly answers: Answers }
  | { readonly kind: 'swept'; readonly swept: Swept }
  | { readonly kind: 'picked'; readonly picked: Picked }
  | { readonly kind: 'refused'; readonly reason: string };

const refused = (reason: string): Done => ({ kind: 'refused', reason });

/** Yields the share that is done. */
export function* work(
  task: Task,
  options: EngineOptions,
  patience: Patience,
): Generator<number, Done> {
  if (task.kind === 'pick') return { kind: 'picked', picked: yield* pick(task.problem, patience) };
  const read = readBook(task.book);
  if (!read.ok) return refused(read.reason);
  const trial = trialOf(read.document, options);
  if (task.kind === 'sweep') {
    const swept = yield* sweep(trial, task.plan);
    return typeof swept === 'string' ? refused(swept) : { kind: 'swept', swept };
  }
  const { changing, result, search } = task;
  let stopped: string | undefined;
  const dependence = (value: number) => {
    stopped ??= trial.put(changing, { kind: 'number', value });
    const comes = trial.valueOf(result);
    return typeof comes === 'number' ? comes : undefined;
  };
  const answers = yield* solve(dependence, search);
  return stopped === undefined ? { kind: 'solved', answers } : refused(stopped);
}
