import { words } from '../words/words.ts';

/** What a worker is asked: `serve.ts` reads it there. */
export interface Asked<Task> {
  /** As the page speaks it. */
  readonly language: string;
  readonly task: Task;
}

export const asked = <Task>(task: Task): Asked<Task> => ({
  language: document.documentElement.lang,
  task,
});

/** Has a worker do one thing, on a thread of its own, and lets it go. */
export function apart<Answer>(worker: Worker, question: unknown): Promise<Answer> {
  return new Promise((resolve, reject) => {
    worker.addEventListener('message', ({ data }: MessageEvent<Answer>) => {
      worker.terminate();
      resolve(data);
    });
    worker.addEventListener('error', () => {
      worker.terminate();
      reject(new Error(words.app.threadBroke));
    });
    worker.postMessage(asked(question));
  });
}
