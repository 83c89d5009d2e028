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

/** Long enough to take a burst of typing together, well within the second that may be lost. */
const pause = 200;
const retry = 3_000;

/** Writes each change to the journal soon after it was made, and says how that goes. */
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
  const schedule = (milliseconds: number): void => {
    callOff?.();
    callOff = stopped ? undefined : later(() => void flush(), milliseconds);
  };

  async function writePending(): Promise<void> {
    const batch = pending;
    pending = [];
    due = false;
    try {
      const at = await write(batch);
      if (!due) tell({ kind: 'saved', at });
      else schedule(pause);
    } catch (cause) {
      pending = [...batch, ...pending];
      due = true;
      tell({ kind: 'unsaved', reason: problem(cause).message });
      schedule(retry);
    }
  }

  async function flush(): Promise<void> {
    callOff?.();
    callOff = undefined;
    while (writing) await writing;
    if (!due) return;
    writing = writePending().finally(() => {
      writing = undefined;
    });
    await writing;
  }

  return {
    add(line) {
      pending.push(line);
      due = true;
      if (state.kind === 'saved') tell({ kind: 'saving' });
      // Not put off again by further typing: a change waits at most one pause.
      if (!callOff) schedule(pause);
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
