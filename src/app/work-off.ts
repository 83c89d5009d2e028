/** How far long work is. */
export interface Progress {
  readonly kind: 'progress';
  readonly share: number;
}

/** In a worker: does long work step by step and tells the page of each step, at last what it came to. */
export function workOff<Answer extends { readonly kind: string }>(
  work: () => Iterator<number, Exclude<Answer, Progress>>,
  failed: Exclude<Answer, Progress>,
): void {
  const answer = (message: Exclude<Answer, Progress> | Progress) => postMessage(message);
  try {
    const doing = work();
    for (;;) {
      const { done, value } = doing.next();
      if (done) return answer(value);
      answer({ kind: 'progress', share: value });
    }
  } catch {
    answer(failed);
  }
}
