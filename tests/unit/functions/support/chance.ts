import { randomInt } from 'node:crypto';

/** Chosen afresh for each run and printed with the tests; SEED repeats a run. */
export const seed = Number(process.env['SEED'] ?? randomInt(2 ** 31));

/** Evenly spread numbers from 0 to 1, always the same for one seed (mulberry32). */
export function chance(from: number): () => number {
  let state = from >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}
