import { work, type Done, type Task } from '../choose/work.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { words } from '../words/words.ts';

export type ChooseAnswer = Done | { readonly kind: 'progress'; readonly share: number };

/** Half a minute for the best set, a quarter for the next one. */
const patience = { each: 30_000, second: 15_000, now: () => performance.now() };

const answer = (message: ChooseAnswer) => postMessage(message);

export function take(task: Task): void {
  try {
    const options = {
      clock: () => new Date(),
      chance: Math.random,
      fixtures: fixturesIn,
      spectra: spectraIn,
    };
    const doing = work(task, options, patience);
    for (;;) {
      const { done, value } = doing.next();
      if (done) return answer(value);
      answer({ kind: 'progress', share: value });
    }
  } catch {
    answer({ kind: 'refused', reason: words.app.threadBroke });
  }
}
