import { nameOf } from './problems.ts';

/** A book that this tab alone may write until it lets go. */
export interface Hold {
  release(): void;
}

/** The part of Web Locks that is used here. */
export interface Locks {
  request(
    name: string,
    options: { readonly ifAvailable: true } | { readonly signal: AbortSignal },
    /** Gets `null` where the lock was wanted only if nobody has it, and somebody has. */
    work: (lock: unknown) => Promise<void>,
  ): Promise<unknown>;
}

/** A page that is being reloaded lets go of its book only after the new one has begun to load. */
const patience = 1_000;

/**
 * Takes a book for this tab; `undefined` if another tab has it. A browser without locks lets every
 * tab have it: there the store takes lines only from the tab that opened the book last.
 */
export async function holdBook(
  id: string,
  locks: Locks | undefined,
  wait = patience,
): Promise<Hold | undefined> {
  if (!locks) return free;
  const name = `halfstop book ${id}`;
  // Whether somebody has it is for the browser to say, however late: a busy one is no other tab.
  const hold = await request(locks, name, { ifAvailable: true });
  return hold ?? request(locks, name, { signal: AbortSignal.timeout(wait) });
}

const request = (
  locks: Locks,
  name: string,
  options: Parameters<Locks['request']>[1],
): Promise<Hold | undefined> =>
  new Promise((resolve) => {
    const held = async (lock: unknown): Promise<void> => {
      if (lock === null) return resolve(undefined);
      await new Promise<void>((release) => resolve({ release }));
    };
    locks.request(name, options, held).catch((cause: unknown) => {
      const taken = ['TimeoutError', 'AbortError'].includes(nameOf(cause));
      resolve(taken ? undefined : free);
    });
  });

const free: Hold = { release: () => undefined };
