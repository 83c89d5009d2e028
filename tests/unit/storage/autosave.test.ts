import { describe, expect, it } from 'vitest';
import { createAutosave, type SaveState } from '../../../src/storage/autosave.ts';
import { StorageProblem, type BookStore, type KeptBook } from '../../../src/storage/store.ts';

/** A store in memory that can be told to fail, and timers that run when told. */
function bench() {
  const kept: string[] = [];
  const states: SaveState[] = [];
  const timers: { run: () => void; milliseconds: number; off: boolean }[] = [];
  let failure: unknown;
  const store: BookStore = {
    list: () => Promise.resolve([]),
    read: () => Promise.resolve(undefined),
    begin: () => Promise.resolve(),
    append: (_book: KeptBook, lines) => {
      if (failure) return Promise.reject(failure);
      kept.push(...lines);
      return Promise.resolve();
    },
    fold: () => Promise.resolve(),
    remove: () => Promise.resolve(),
    close: () => undefined,
  };
  const autosave = createAutosave(
    {
      store,
      describe: (size) => ({
        id: 'b',
        title: 'Harbour Hours',
        changed: '2026-03-02T14:02:00Z',
        size,
      }),
      later: (run, milliseconds) => {
        const timer = { run, milliseconds, off: false };
        timers.push(timer);
        return () => {
          timer.off = true;
        };
      },
      heard: (state) => states.push(state),
    },
    0,
  );
  const tick = async (): Promise<void> => {
    for (const timer of timers.splice(0)) if (!timer.off) timer.run();
    await autosave.flush();
  };
  return { autosave, kept, states, timers, tick, fail: (cause: unknown) => (failure = cause) };
}

describe('autosave', () => {
  it('keeps a burst of changes together and in order', async () => {
    const { autosave, kept, states, tick } = bench();
    autosave.add('1');
    autosave.add('2');
    expect(states.map(({ kind }) => kind)).toEqual(['saving']);
    await tick();
    expect(kept).toEqual(['1', '2']);
    expect(autosave.state).toEqual({ kind: 'saved', at: '2026-03-02T14:02:00Z' });
  });

  it('is not put off by further typing: each change waits less than a second', () => {
    const { autosave, timers } = bench();
    for (let index = 0; index < 50; index++) autosave.add(String(index));
    expect(timers).toHaveLength(1);
    expect(timers[0]?.milliseconds).toBeLessThan(1000);
  });

  it('says so when storage is full, keeps the changes and tries again', async () => {
    const { autosave, kept, tick, fail } = bench();
    fail(new DOMException('no room', 'QuotaExceededError'));
    autosave.add('1');
    await tick();
    expect(autosave.state).toEqual({ kind: 'unsaved', reason: new StorageProblem('full').message });
    autosave.add('2');
    fail(undefined);
    await tick();
    expect(kept).toEqual(['1', '2']);
    expect(autosave.state.kind).toBe('saved');
  });

  it('writes what is pending before it stops', async () => {
    const { autosave, kept } = bench();
    autosave.add('1');
    await autosave.stop();
    expect(kept).toEqual(['1']);
  });
});
