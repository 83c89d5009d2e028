import { handoutsOf, type Handout } from '../book/exercises.ts';
import type { Book, ShelfItem, Step } from '../book/types.ts';

/** One more check of an answer, as the hand-out keeps it. */
export const oneMoreTry = (handout: Handout, question: string): Step =>
  kept([
    { ...handout, tries: { ...handout.tries, [question]: (handout.tries[question] ?? 0) + 1 } },
  ]);

const kept = (handouts: readonly Handout[]): Step => ({
  kind: 'setShelf',
  shelf: 'exercises',
  items: handouts.map((one) => ({ id: one.id, item: one satisfies ShelfItem })),
});

/**
 * What was checked stays counted, whatever is undone, redone or restored: where a change has lowered
 * a count, the highest is put back and belongs to that change. Returns how to stop.
 */
export function keepTries(book: Book): () => void {
  const { document } = book;
  const most = new Map<string, Handout['tries']>();
  /** Hand-outs with a count below the highest, as they are to be. */
  const lowered = (): readonly Handout[] =>
    handoutsOf(document).flatMap((one) => {
      const tries = highest(one.tries, most.get(one.id) ?? {});
      most.set(one.id, tries);
      const isLower = Object.keys(tries).some((id) => tries[id] !== one.tries[id]);
      return isLower ? [{ ...one, tries }] : [];
    });
  const putBack = () => {
    const handouts = lowered();
    if (handouts.length > 0) book.follow([kept(handouts)]);
  };
  lowered();
  return book.listen(({ effects }) => {
    const concerns = effects.some((one) => one.kind === 'shelf' && one.shelf === 'exercises');
    // Whoever else listens, the journal above all, hears of the change before of what follows from it.
    if (concerns && lowered().length > 0) queueMicrotask(putBack);
  });
}

const highest = (one: Handout['tries'], other: Handout['tries']): Handout['tries'] => ({
  ...one,
  ...Object.fromEntries(
    Object.entries(other).map(([id, count]) => [id, Math.max(count, one[id] ?? 0)]),
  ),
});
