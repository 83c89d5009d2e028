import { speakFirstOf } from '../words/languages.ts';
import type { Asked } from './apart.ts';

/**
 * In a worker: does what the page asks, in the language of the page. Modules read their words as they
 * load, so the work is loaded with the first question. What fails to load is an error of the worker.
 */
export function serve<Task>(load: () => Promise<{ readonly take: (task: Task) => void }>): void {
  let work: ReturnType<typeof load> | undefined;
  addEventListener('message', ({ data: { language, task } }: MessageEvent<Asked<Task>>) => {
    work ??= speakFirstOf([language]).then(load);
    void work.then(({ take }) => take(task)).catch(reportError);
  });
}
