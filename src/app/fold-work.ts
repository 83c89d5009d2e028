import { openDatabase } from '../storage/database.ts';
import { foldBook, type FoldedAway } from '../storage/folding.ts';

/** What the worker answers; `null` when everything was left as it was. */
export type FoldAnswer = FoldedAway | null;

/** Folds the journal of the book of that id. */
export function take(book: string): void {
  const store = openDatabase();
  void foldBook(store, book)
    .catch(() => undefined)
    .then((away) => {
      store.close();
      postMessage((away ?? null) satisfies FoldAnswer);
    });
}
