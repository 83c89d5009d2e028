import { configureGlobal } from 'fast-check';

declare module 'vitest' {
  interface TaskMeta {
    /** In short what came out, for the page of long runs. */
    measured?: string;
  }
}

const hard = process.env['HARD'] === '1';

/** One seed for all random tests of a run, so that a failure can be had again: `npm run hard -- SEED`. */
const seed = Number(process.env['SEED'] ?? Number.NaN);
if (Number.isInteger(seed)) configureGlobal({ seed });

/** How many random cases to try: few with every test run, many with `npm run hard`. */
export function runs(few: number, many = few * 50): number {
  return hard ? many : few;
}
