import type { Checker } from '../check/checker.ts';
import type { Remark } from '../check/remark.ts';
import { signal, type ReadonlySignal } from '../panels/kit/signals.ts';

/** The remarks on the whole book. */
export interface Remarking {
  readonly all: ReadonlySignal<readonly Remark[]>;
  /** Something changed: reads what is new, whenever the hand rests. */
  readOn(): void;
  stop(): void;
}

/** Milliseconds: shorter than what is felt between a key press and its letter. */
const slice = 8;

export function createRemarking(checker: Checker): Remarking {
  const all = signal<readonly Remark[]>([]);
  let isWaiting = false;
  let isStopped = false;
  const read = (): void => {
    isWaiting = false;
    if (isStopped) return;
    const end = performance.now() + slice;
    if (checker.readOn(() => performance.now() < end)) all.value = checker.remarks();
    else wait();
  };
  const wait = (): void => {
    if (isWaiting) return;
    isWaiting = true;
    // Not every browser says when it is idle.
    if ('requestIdleCallback' in window) requestIdleCallback(read, { timeout: 1_000 });
    else setTimeout(read);
  };
  return { all, readOn: wait, stop: () => void (isStopped = true) };
}
