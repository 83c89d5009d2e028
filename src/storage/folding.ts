import { foldPages } from './pages.ts';
import { lengthOf, type BookStore } from './store.ts';

/** Gestures that can still be undone after the pages were read again. */
const gesturesKept = 1_000;

/** What folding took out of the journal. */
export interface FoldedAway {
  readonly lines: number;
  readonly characters: number;
}

/**
 * Folds the first lines of a kept journal into its snapshot. It takes its time: not for the thread
 * that paints. Lines that are appended meanwhile stay.
 */
export async function foldBook(
  store: BookStore,
  id: string,
  keep = gesturesKept,
): Promise<FoldedAway | undefined> {
  const pages = await store.read(id);
  const folded = pages && foldPages(pages, keep);
  if (!folded) return undefined;
  const { snapshot, lines } = folded;
  const through = pages.numbers[lines - 1] ?? pages.upTo;
  const done = await store.fold(id, pages.upTo, snapshot, through);
  return done ? { lines, characters: lengthOf(pages.journal.slice(0, lines)) } : undefined;
}

const limits = { lines: 1_500, characters: 8_000_000 };
/** Where nothing could be folded, it is not tried again before this many more lines. */
const patience = 250;

export interface Folding {
  /** Lines have come to the journal. */
  grew(lines: number, characters: number): void;
}

/** Has a journal folded each time it has become long. `fold` never does it on this thread. */
export function createFolding(
  lines: number,
  characters: number,
  fold: () => Promise<FoldedAway | undefined>,
): Folding {
  let next = 0;
  let running = false;
  const look = (): void => {
    const long = lines > limits.lines || characters > limits.characters;
    if (!long || lines < next || running) return;
    running = true;
    next = lines + patience;
    fold()
      .then((away) => {
        if (!away) return;
        lines -= away.lines;
        characters -= away.characters;
        next = 0;
      })
      // Left as it is, and tried again when there is more.
      .catch(() => undefined)
      .finally(() => {
        running = false;
      });
  };
  look();
  return {
    grew(moreLines, moreCharacters) {
      lines += moreLines;
      characters += moreCharacters;
      look();
    },
  };
}
