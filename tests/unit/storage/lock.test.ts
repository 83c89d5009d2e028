import { describe, expect, it } from 'vitest';
import { holdBook, type Locks } from '../../../src/storage/lock.ts';

/** One queue a name, as the Web Locks API (W3C) describes exclusive locks; each answer so late. */
function lockManager(late = 0): Locks {
  const queues = new Map<string, Promise<unknown>>();
  const free = new Set<Promise<unknown>>();
  return {
    async request(name, options, work) {
      await new Promise((resolve) => setTimeout(resolve, late));
      const before = queues.get(name) ?? Promise.resolve();
      if ('ifAvailable' in options) {
        if (queues.has(name) && !free.has(before)) return work(null);
      } else options.signal.throwIfAborted();
      const aborted = new Promise((_, reject) => {
        if ('signal' in options)
          options.signal.addEventListener('abort', () => reject(options.signal.reason as Error));
      });
      const granted = Promise.race([before, aborted]).then(() => work({ name }));
      const after: Promise<unknown> = Promise.allSettled([before, granted]).then(() =>
        free.add(after),
      );
      queues.set(name, after);
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

  it('a browser that answers late is no other tab', async () => {
    const locks = lockManager(3 * short);
    expect(await holdBook('loft', locks, short)).toBeDefined();
    expect(await holdBook('loft', locks, short)).toBeUndefined();
  });

  it('without locks, or where they are refused, every tab may try', async () => {
    expect(await holdBook('loft', undefined)).toBeDefined();
    const refusing: Locks = {
      request: () => Promise.reject(new DOMException('opaque origin', 'SecurityError')),
    };
    expect(await holdBook('loft', refusing)).toBeDefined();
  });
});
