import { problem } from './problems.ts';

/** What the header says about keeping. */
export type SaveState =
  | { readonly kind: 'saved'; readonly at: string | undefined }
  | { readonly kind: 'saving' }
  | { readonly kind: 'unsaved'; readonly reason: string };

/** What autosave needs of the world. */
export interface AutosaveMeans {
  /** Hands these lines over, after those handed over before: a crash of the browser spares them. */
  readonly write: (lines: readonly string[]) => Promise<void>;
  /** Makes sure that a power cut spares them too; resolves to when, in ISO 8601. */
  readonly settle: () => Promise<string>;
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

/** Waiting for the disk makes whatever comes next wait too: that is left for a pause in the work. */
const quiet = 300;
const retry = 3_000;

/**
 * Writes each change to the journal as soon as it is made, those made meanwhile together after it,
 * and says how that goes. No timer stands between a change and its writing: a busy page would make
 * it late.
 */
export function createAutosave({ write, settle, later, heard }: AutosaveMeans): Autosave {
  let pending: string[] = [];
  let due = false;
  let unsettled = false;
  let failed = false;
  let stopped = false;
  let state: SaveState = { kind: 'saved', at: undefined };
  let callOff: (() => void) | undefined;
  let writing: Promise<void> | undefined;
  let settling: Promise<void> | undefined;

  const tell = (next: SaveState): void => {
    state = next;
    heard(next);
  };
  const flushIn = (milliseconds: number): void => {
    callOff?.();
    callOff = stopped ? undefined : later(() => void flush(), milliseconds);
  };
  const fail = (cause: unknown): void => {
    failed = true;
    due = true;
    tell({ kind: 'unsaved', reason: problem(cause).message });
    flushIn(retry);
  };

  async function writeWhatIsDue(): Promise<void> {
    while (due && !failed) {
      const batch = pending;
      pending = [];
      due = false;
      try {
        await write(batch);
        unsettled = true;
        flushIn(quiet);
      } catch (cause) {
        pending = [...batch, ...pending];
        fail(cause);
      }
    }
  }

  function start(): Promise<void> {
    writing ??= writeWhatIsDue().finally(() => {
      writing = undefined;
      if (due && !failed) void start();
    });
    return writing;
  }

  async function flush(): Promise<void> {
    failed = false;
    while ((due || writing) && !failed) await start();
    callOff?.();
    callOff = undefined;
    if (failed) return flushIn(retry);
    while (settling) await settling;
    if (!unsettled || failed) return;
    settling = settleAll().finally(() => {
      settling = undefined;
    });
    await settling;
  }

  async function settleAll(): Promise<void> {
    unsettled = false;
    try {
      const at = await settle();
      if (!due && !unsettled) tell({ kind: 'saved', at });
    } catch (cause) {
      fail(cause);
    }
  }

  return {
    add(line) {
      pending.push(line);
      due = true;
      if (state.kind === 'saved') tell({ kind: 'saving' });
      // All changes of one gesture together. After a failure they wait for the next try.
      if (!failed) queueMicrotask(() => void start());
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
      callOff?.();
      await flush();
    },
  };
}
