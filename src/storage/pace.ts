/** Work for so long without a version, and one is kept. */
const tenMinutes = 10 * 60 * 1_000;

export interface Pace {
  /** Something was done to the book. */
  worked(): void;
  /** A version was kept for another reason: the ten minutes begin anew. */
  kept(): void;
  stop(): void;
}

export interface PaceMeans {
  readonly now: () => Date;
  /** Runs something later; returns how to call it off. */
  readonly later: (run: () => void, milliseconds: number) => () => void;
  /** When the last version was kept, or the book was begun. */
  readonly last: Date;
  readonly keep: () => void;
}

/** Asks for a version ten minutes after the last one, if anything was done since. */
export function createPace({ now, later, last, keep }: PaceMeans): Pace {
  let since = last.getTime();
  let callOff: (() => void) | undefined;
  const kept = (): void => {
    callOff?.();
    callOff = undefined;
    since = now().getTime();
  };
  return {
    kept,
    worked() {
      callOff ??= later(
        () => {
          kept();
          keep();
        },
        Math.max(0, since + tenMinutes - now().getTime()),
      );
    },
    stop: () => callOff?.(),
  };
}
