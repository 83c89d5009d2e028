import { problem, type BookStore, type KeptBook } from './store.ts';

/** What the header says about keeping. */
export type SaveState =
  | { readonly kind: 'saved'; readonly at: string | undefined }
  | { readonly kind: 'saving' }
  | { readonly kind: 'unsaved'; readonly reason: string };

/** What autosave needs of the world. */
export interface AutosaveMeans {
  readonly store: BookStore;
  /** The book's line in the list of kept books, as of now. */
  readonly describe: (size: number) => KeptBook;
  /** Runs something later; returns how to call it off. */
  readonly later: (run: () => void, milliseconds: number) => () => void;
  readonly heard: (state: SaveState) => void;
  /** The journal has grown: a good moment to fold it into a snapshot. */
  readonly grown?: (lines: number, characters: number) => void;
}

export interface Autosave {
  /** One journal line of what was just done. */
  add(line: string): void;
  /** Writes what is pending at once; resolves when it is kept, or known not to be. */
  flush(): Promise<void>;
  readonly state: SaveState;
  /** Stops; what is pending is written first. */
  stop(): Promise<void>;
}

/** Long enough to take a burst of typing together, well within the second that may be lost. */
const pause = 200;
const retry = 5_000;

/** Writes each change to the journal soon after it was made, and says how that goes. */
export function createAutosave(means: AutosaveMeans, sizeBefore: number): Autosave {
  let pending: string[] = [];
  let state: SaveState = { kind: 'saved', at: undefined };
  let callOff: (() => void) | undefined;
  let writing: Promise<void> | undefined;
  let lines = 0;
  let characters = sizeBefore;

  const tell = (next: SaveState): void => {
    state = next;
    means.heard(next);
  };
  const schedule = (milliseconds: number): void => {
    callOff?.();
    callOff = means.later(() => void flush(), milliseconds);
  };

  async function write(): Promise<void> {
    const batch = pending;
    pending = [];
    const written = batch.reduce((sum, line) => sum + line.length, 0);
    const book = means.describe(characters + written);
    try {
      await means.store.append(book, batch);
    } catch (cause) {
      pending = [...batch, ...pending];
      tell({ kind: 'unsaved', reason: problem(cause).message });
      schedule(retry);
      return;
    }
    lines += batch.length;
    characters += written;
    if (pending.length === 0) tell({ kind: 'saved', at: book.changed });
    else schedule(pause);
    means.grown?.(lines, characters);
  }

  async function flush(): Promise<void> {
    callOff?.();
    callOff = undefined;
    while (writing) await writing;
    if (pending.length === 0) return;
    writing = write().finally(() => {
      writing = undefined;
    });
    await writing;
  }

  return {
    add(line) {
      pending.push(line);
      if (state.kind === 'saved') tell({ kind: 'saving' });
      // Not put off again by further typing: a change waits at most one pause.
      if (!callOff) schedule(pause);
    },
    flush,
    get state() {
      return state;
    },
    async stop() {
      await flush();
      callOff?.();
    },
  };
}
