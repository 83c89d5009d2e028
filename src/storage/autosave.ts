import { problem } from './problems.ts';

/** What the header says about keeping. */
export type SaveState =
  | { readonly kind: 'saved'; readonly at: string | undefined }
  | { readonly kind: 'saving' }
  | { readonly kind: 'unsaved'; readonly reason: string };

/** What autosave needs of the world. */
export interface AutosaveMeans {
  /** Keeps these lines, after those it was given before; resolves to when it did, in ISO 8601. */
  readonly write: (lines: readonly string[]) => Promise<string>;
  /** Runs something later; returns how to call it off. */
  readonly later: (run: () => void, milliseconds: number) => () => void;
  readonly heard: (state: SaveState) => void;
}

export interface Autosave {
  /** One journal line of what was just done. */
  add(line: string): void;
  /** Writes at once, even where no line is waiting; tried again until it is done. */
  begin(): Promise<void>;
  /** Writes what is pending at once; resolves when it is kept, or known not to be. */
  flush(): Promise<void>;
  readonly state: SaveState;
  /** Stops; what is pending is written first. */
  stop(): Promise<void>;
}

const retry = 3_000;

/**
 * Writes each change to the journal as soon as it is made, those made meanwhile together after it,
 * and says how that goes. No timer stands between a change and its writing: a busy page would make
 * it late.
 */
export function createAutosave({ write, later, heard }: AutosaveMeans): Autosave {
  let pending: string[] = [];
  let due = false;
  let stopped = false;
  let state: SaveState = { kind: 'saved', at: undefined };
  let callOff: (() => void) | undefined;
  let writing: Promise<void> | undefined;

  const tell = (next: SaveState): void => {
    state = next;
    heard(next);
  };

  async function writePending(): Promise<void> {
    const batch = pending;
    pending = [];
    due = false;
    try {
      const at = await write(batch);
      tell(due ? { kind: 'saving' } : { kind: 'saved', at });
    } catch (cause) {
      pending = [...batch, ...pending];
      due = true;
      tell({ kind: 'unsaved', reason: problem(cause).message });
      if (!stopped) callOff = later(() => void flush(), retry);
    }
  }

  async function flush(): Promise<void> {
    callOff?.();
    callOff = undefined;
    while (writing) await writing;
    if (!due) return;
    writing = writePending().finally(() => {
      writing = undefined;
      if (due && !callOff && !stopped) void flush();
    });
    await writing;
  }

  return {
    add(line) {
      pending.push(line);
      due = true;
      if (state.kind === 'saved') tell({ kind: 'saving' });
      // All changes of one gesture together. After a failure they wait for the next try.
      if (!callOff && !writing) queueMicrotask(() => void flush());
    },
    begin() {
      due = true;
      return flush();
    },
    flush,
    get state() {
      return state;
    },
    async stop() {
      stopped = true;
      await flush();
    },
  };
}
