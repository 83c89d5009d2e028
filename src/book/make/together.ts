import { createBook } from '../book.ts';
import { readBook } from '../form/read.ts';
import { writeBook } from '../form/write.ts';
import type { Document, Step } from '../types.ts';
import { made, refused, type Made } from './made.ts';

/**
 * What several makers do one after the other, each on the book as the one before leaves it: one
 * gesture, tried on a copy, so that nothing of it is done where one of them refuses.
 */
export function together(
  document: Document,
  label: string,
  makers: readonly ((document: Document) => Made)[],
): Made {
  const copy = readBook(writeBook(document));
  if (!copy.ok) return refused(copy.reason);
  const book = createBook(copy.document);
  const steps: Step[] = [];
  for (const make of makers) {
    const next = make(book.document);
    if (!next.ok) return next;
    const ran = book.run(next.transaction);
    if (!ran.ok) return refused(ran.reason);
    steps.push(...next.transaction.steps);
  }
  return made(label, steps);
}
