import type { Made } from '../book/make/made.ts';
import type { Step } from '../book/types.ts';
import { done, refused, type Context, type Outcome } from './command.ts';

/** Runs what was made, or says why there is nothing to run. */
export function carryOut({ book }: Pick<Context, 'book'>, made: Made, say?: string): Outcome {
  if (!made.ok) return refused(made.reason);
  const ran = book.run(made.transaction);
  if (!ran.ok) return refused(ran.reason);
  return say === undefined ? done : { ok: true, say };
}

/** Runs a few steps as one gesture. */
export function doSteps(
  context: Pick<Context, 'book'>,
  label: string,
  steps: readonly Step[],
): Outcome {
  return carryOut(context, { ok: true, transaction: { label, steps } });
}
