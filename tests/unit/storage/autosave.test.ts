import { describe, expect, it } from 'vitest';
import { createAutosave, type SaveState } from '../../../src/storage/autosave.ts';
import { StorageProblem } from '../../../src/storage/problems.ts';

const afternoon = '2026-03-02T14:02:00Z';

/** A place to write that can be told to fail, and timers that run when told. */
function bench() {
  const kept: string[] = [];
  const settled: number[] = [];
  const states: SaveState[] = [];
  const timers: { run: () => void; milliseconds: number; off: boolean }[] = [];
  let failure: unknown;
  const autosave = createAutosave({
    write: (lines) => {
      if (failure) return Promise.reject(failure);
      kept.push(...lines);
      return Promise.resolve();
    },
    settle: () => {
      if (failure) return Promise.reject(failure);
      settled.push(kept.length);
      return Promise.resolve(afternoon);
    },
    later: (run, milliseconds) => {
      const timer = { run, milliseconds, off: false };
      timers.push(timer);
      return () => {
        timer.off = true;
      };
    },
    heard: (state) => states.push(state),
  });
  const tick = async (): Promise<void> => {
    for (const timer of timers.splice(0)) if (!timer.off) timer.run();
    await autosave.flush();
  };
  const waiting = () => timers.filter(({ off }) => !off);
  return {
    autosave,
    kept,
    settled,
    states,
    waiting,
    tick,
    fail: (cause: unknown) => (failure = cause),
  };
}

const noRoom = () => new DOMException('no room', 'QuotaExceededError');

describe('autosave', () => {
  it('keeps a burst of changes together and in order', async () => {
    const { autosave, kept, states, tick } = bench();
    autosave.add('1');
    autosave.add('2');
    expect(states.map(({ kind }) => kind)).toEqual(['saving']);
    await tick();
    expect(kept).toEqual(['1', '2']);
    expect(autosave.state).toEqual({ kind: 'saved', at: afternoon });
  });

  it('waits for no timer: what was done is on its way when the hand of the browser is free', async () => {
    const { autosave, kept } = bench();
    autosave.add('1');
    await Promise.resolve();
    expect(kept).toEqual(['1']);
  });

  it('says saved once it lies on the disk, less than a second after the last change', async () => {
    const { autosave, settled, states, waiting } = bench();
    for (const line of ['1', '2', '3']) {
      autosave.add(line);
      await new Promise((done) => setTimeout(done, 0));
    }
    expect(settled, 'not waited for between changes').toEqual([]);
    expect(states.map(({ kind }) => kind)).toEqual(['saving']);
    const [pause, ...more] = waiting();
    expect(more).toEqual([]);
    expect(pause?.milliseconds).toBeLessThan(1000);
    pause?.run();
    await new Promise((done) => setTimeout(done, 0));
    expect(settled).toEqual([3]);
    expect(autosave.state).toEqual({ kind: 'saved', at: afternoon });
  });

  it('says so when storage is full, keeps the changes and tries again', async () => {
    const { autosave, kept, tick, fail } = bench();
    fail(noRoom());
    autosave.add('1');
    await tick();
    expect(autosave.state).toEqual({ kind: 'unsaved', reason: new StorageProblem('full').message });
    autosave.add('2');
    expect(autosave.state.kind, 'still not saved while more is typed').toBe('unsaved');
    fail(undefined);
    await tick();
    expect(kept).toEqual(['1', '2']);
    expect(autosave.state.kind).toBe('saved');
  });

  it('goes on trying for a new book in which nothing was changed yet', async () => {
    const { autosave, waiting, tick, fail } = bench();
    fail(noRoom());
    await autosave.begin();
    expect(autosave.state.kind).toBe('unsaved');
    expect(waiting()).toHaveLength(1);
    fail(undefined);
    await tick();
    expect(autosave.state).toEqual({ kind: 'saved', at: afternoon });
  });

  it('what is typed while it writes is written too before it says saved', async () => {
    const { autosave, kept, states } = bench();
    autosave.add('1');
    const writing = autosave.flush();
    autosave.add('2');
    await writing;
    expect(kept).toEqual(['1', '2']);
    expect(states.map(({ kind }) => kind)).toEqual(['saving', 'saved']);
  });

  it('a change made while it settles is not called saved', async () => {
    const { autosave, states, tick } = bench();
    autosave.add('1');
    await new Promise((done) => setTimeout(done, 0));
    const settling = autosave.flush();
    autosave.add('2');
    await settling;
    expect(states.map(({ kind }) => kind)).toEqual(['saving']);
    await tick();
    expect(autosave.state.kind).toBe('saved');
  });

  it('writes what is pending before it stops, and then is quiet', async () => {
    const { autosave, kept, waiting, fail } = bench();
    autosave.add('1');
    await autosave.stop();
    expect(kept).toEqual(['1']);
    fail(noRoom());
    autosave.add('2');
    await autosave.flush();
    expect(waiting()).toEqual([]);
  });
});
