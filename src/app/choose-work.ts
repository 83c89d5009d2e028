import { work, type Done, type Task } from '../choose/work.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { words } from '../words/words.ts';

export type ChooseAnswer = Done | { readonly kind: 'progress'; readonly share: number };

const answer = (message: ChooseAnswer) => postMessage(message);

export function take(task: Task): void {
  try {
    const doing = work(task, {
      clock: () => new Date(),
      chance: Math.random,
      fixtures: fixturesIn,
    });
    for (;;) {
      const { done, value } = doing.next();
      if (done) return answer(value);
      answer({ kind: 'progress', share: value });
    }
  } catch {
    answer({ kind: 'refused', reason: words.app.threadBroke });
  }
}
