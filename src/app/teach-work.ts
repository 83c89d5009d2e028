import { work, type TeachDone, type TeachTask } from '../teach/work.ts';
import { words } from '../words/words.ts';
import { workOff, type Progress } from './work-off.ts';

export type TeachAnswer = TeachDone | Progress;

export const take = (task: TeachTask): void =>
  workOff<TeachAnswer>(() => work(task), { kind: 'refused', reason: words.app.threadBroke });
