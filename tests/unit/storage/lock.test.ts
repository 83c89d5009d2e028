import { describe, expect, it } from 'vitest';
import { holdBook, type Locks } from '../../../src/storage/lock.ts';

/** One queue a name, as the Web Locks API (W3C) describes exclusive locks. */
function lockManager(): Locks {
  const queues = new Map<string, Promise<unknown>>();
  return {
    request(name, { signal }, work) {
      const before = queues.get(name) ?? Promise.resolve();
      const granted = Promise.race([
        before,
        new Promise((_, reject) => {
          signal.addEventListener('abort', () => reject(signal.reason as Error));
        }),
      ]).then(work);
      queues.set(
        name,
        Promise.allSettled([before, granted]).then(() => undefined),
      );
      return granted;
    },
  };
}

const short = 30;

describe('holding a book', () => {
  it('a second tab does not get it', async () => {
    const locks = lockManager();
    expect(await holdBook('loft', locks, short)).toBeDefined();
    expect(await holdBook('loft', locks, short)).toBeUndefined();
    expect(await holdBook('shed', locks, short), 'another book').toBeDefined();
  });

  it('once let go it can be had again', async () => {
    const locks = lockManager();
    (await holdBook('loft', locks, short))?.release();
    expect(await holdBook('loft', locks, short)).toBeDefined();
  });

  it('a tab that lets go in a moment is waited for', async () => {
    const locks = lockManager();
    const first = await holdBook('loft', locks, short);
    setTimeout(() => first?.release(), 10);
    expect(await holdBook('loft', locks, 10_000)).toBeDefined();
  });

  it('without locks, or where they are refused, every tab may try', async () => {
    expect(await holdBook('loft', undefined)).toBeDefined();
    const refusing: Locks = {
      request: () => Promise.reject(new DOMException('opaque origin', 'SecurityError')),
    };
    expect(await holdBook('loft', refusing)).toBeDefined();
  });
});
