import { openDatabase } from '../storage/database.ts';
import { foldBook, type FoldedAway } from '../storage/folding.ts';

/** What the worker answers; `null` when everything was left as it was. */
export type FoldAnswer = FoldedAway | null;

addEventListener('message', ({ data }: MessageEvent<string>) => {
  const store = openDatabase();
  void foldBook(store, data)
    .catch(() => undefined)
    .then((away) => {
      store.close();
      postMessage((away ?? null) satisfies FoldAnswer);
    });
});
