import { nameOf } from './problems.ts';

/** A book that this tab alone may write until it lets go. */
export interface Hold {
  release(): void;
}

/** The part of Web Locks that is used here. */
export interface Locks {
  request(
    name: string,
    options: { readonly signal: AbortSignal },
    work: () => Promise<void>,
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
  return new Promise((resolve) => {
    const held = () =>
      new Promise<void>((release) => {
        resolve({ release });
      });
    const options = { signal: AbortSignal.timeout(wait) };
    locks.request(`halfstop book ${id}`, options, held).catch((cause: unknown) => {
      const taken = ['TimeoutError', 'AbortError'].includes(nameOf(cause));
      resolve(taken ? undefined : free);
    });
  });
}

const free: Hold = { release: () => undefined };
