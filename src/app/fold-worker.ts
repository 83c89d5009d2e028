import { openDatabase } from '../storage/database.ts';
import { foldBook } from '../storage/folding.ts';

/** Takes the id of a book, answers with what was folded. */
addEventListener('message', ({ data }: MessageEvent<string>) => {
  const store = openDatabase();
  void foldBook(store, data)
    .catch(() => undefined)
    .then((away) => {
      store.close();
      postMessage(away);
    });
});
