import type { Change, Means } from '../book/types.ts';
import { sentencesNow } from '../plan/collect/missing.ts';
import type { Desk } from './desk.ts';
import { lookAt } from './look-at.ts';

/** A pause in the work: several key presses are followed once. */
const pause = 200;

/**
 * Keeps what an order says of the rigs true after each change. The sentence belongs to the change
 * that it follows from: one undo takes both back. Returns how to stop.
 */
export function followRigs(desk: Desk, means: Means): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const say = (): void => {
    for (const made of sentencesNow(lookAt(desk), means))
      if (made.ok) desk.book.follow(made.transaction.steps);
  };
  const soon = (): void => {
    clearTimeout(timer);
    timer = setTimeout(say, pause);
  };
  const stopListening = desk.book.listen(({ kind }: Change) => {
    if (kind !== 'follow') soon();
  });
  soon();
  return () => {
    clearTimeout(timer);
    stopListening();
  };
}
