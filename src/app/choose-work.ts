import { work, type Done, type Task } from '../choose/work.ts';
import { spectraIn } from '../files/spectra/shelf.ts';
import { fixturesIn } from '../files/photometric/shelf.ts';
import { words } from '../words/words.ts';
import { workOff, type Progress } from './work-off.ts';

export type ChooseAnswer = Done | Progress;

/** Half a minute for the best set, a quarter for the next one. */
const patience = { each: 30_000, second: 15_000, now: () => performance.now() };

export function take(task: Task): void {
  const options = {
    clock: () => new Date(),
    chance: Math.random,
    fixtures: fixturesIn,
    spectra: spectraIn,
  };
  workOff<ChooseAnswer>(() => work(task, options, patience), {
    kind: 'refused',
    reason: words.app.threadBroke,
  });
}
