import { writeBook } from '../book/form/write.ts';
import type { Change, Id, Means } from '../book/types.ts';
import { isLive, renewed, sweepOn } from '../choose/again.ts';
import { sweptCells } from '../choose/plans.ts';
import { apart, groundOf, type Choosing } from './choose-hands.ts';
import type { Desk } from './desk.ts';

/** A pause in the work: several key presses are followed once. */
const pause = 400;

/**
 * Tries the live sweeps of a book again after each change, on a thread of its own. What comes out
 * belongs to the change that it follows from: one undo takes both back. Returns how to stop.
 */
export function followSweeps(desk: Desk, means: Means): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let trying: Choosing | undefined;
  let turn = 0;

  const isCurrent = (mine: number): boolean => mine === turn;

  async function tryAgain(mine: number): Promise<void> {
    for (const { id } of desk.book.document.sheets) {
      if (!isLive(desk.book.document, id)) continue;
      await tryOne(id, mine);
      if (!isCurrent(mine)) return;
    }
  }

  async function tryOne(sheet: Id, mine: number): Promise<void> {
    const { document } = desk.book;
    const plan = sweepOn(document, sheet);
    if (!plan) return;
    const cells = sweptCells(groundOf(means, desk), plan);
    trying = apart({ kind: 'sweep', book: writeBook(document), plan }, () => undefined);
    const done = await trying.result;
    trying = undefined;
    // What has changed meanwhile is followed in its own turn; a sweep that fails stays as it was.
    if (!isCurrent(mine) || done.kind !== 'swept') return;
    const made = renewed(document, means, sheet, { plan, cells, swept: done.swept });
    if (made.ok) desk.book.follow(made.transaction.steps);
  }

  const soon = (): void => {
    turn += 1;
    const mine = turn;
    trying?.cancel();
    clearTimeout(timer);
    if (desk.book.document.sheets.some(({ id }) => isLive(desk.book.document, id)))
      timer = setTimeout(() => void tryAgain(mine), pause);
  };

  const stopListening = desk.book.listen(({ kind }: Change) => {
    if (kind !== 'follow') soon();
  });
  soon();
  return () => {
    turn += 1;
    clearTimeout(timer);
    trying?.cancel();
    stopListening();
  };
}
