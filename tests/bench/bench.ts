/**
 * The shape of a bench. Each tests/bench/NAME.bench.ts exports `name`, a sentence that heads its
 * table, and `run`, which measures and returns rows. `npm run bench` runs every file in a process
 * of its own (`npm run bench -- NAME` only those whose name contains NAME) and writes README.md
 * beside them. What counts is the ratio: both of its times are taken in the same run, so that the
 * machine cancels out.
 */
export interface Row {
  /** What was done, e.g. `recalculate 50,000 STOPS that share one input`. */
  readonly what: string;
  /** Milliseconds it took, or what `unit` says. */
  readonly took: number;
  /** What it is held against, e.g. `the engine’s own LOG`. */
  readonly against: string;
  /** What that took. */
  readonly tookAgainst: number;
  /** Of both, where it is not milliseconds. */
  readonly unit?: 'MB';
  /** The ratio above which the bench fails, where one is promised. */
  readonly atMost?: number;
}

export interface Bench {
  readonly name: string;
  run(): Promise<Row[]>;
}

/** Median of the milliseconds that `work` takes, after one run that warms up. */
export async function medianTime(
  work: () => unknown,
  { runs = 5, before = (): unknown => undefined } = {},
): Promise<number> {
  const times: number[] = [];
  for (let turn = 0; turn <= runs; turn += 1) {
    await before();
    const begun = performance.now();
    await work();
    if (turn > 0) times.push(performance.now() - begun);
  }
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
}
