import { nameOf } from './problems.ts';

interface Transaction {
  readonly done: Promise<void>;
  commit(): void;
}

/** Nothing more will be asked of the transaction: all of these requests happen or nothing. */
export async function committed(
  transaction: Transaction,
  requests: readonly unknown[],
): Promise<void> {
  const causes: unknown[] = [];
  for (const request of requests)
    Promise.resolve(request).catch((cause: unknown) => causes.push(cause));
  transaction.commit();
  // Not for the parts: some browsers leave one without an end when they call off the whole.
  await transaction.done.catch((whole: unknown) => {
    throw [whole, ...causes].find((cause) => nameOf(cause) !== 'AbortError') ?? whole;
  });
}
