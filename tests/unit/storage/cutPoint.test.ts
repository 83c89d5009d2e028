import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cutPoint, type LineKind } from '../../../src/storage/cutPoint.ts';
import { runs } from '../../support/runs.ts';

const kinds = (letters: string): LineKind[] =>
  [...letters].map(
    (letter) => ({ d: 'do', f: 'follow', u: 'undo', r: 'redo' })[letter] as LineKind,
  );

describe('where a journal may be cut', () => {
  it('keeps the last gestures', () => {
    expect(cutPoint(kinds('ddddd'), 2)).toBe(3);
    expect(cutPoint(kinds('dd'), 2)).toBe(0);
    expect(cutPoint(kinds('ddd'), 2)).toBe(1);
  });

  it('keeps what a later undo takes back', () => {
    expect(cutPoint(kinds('dddduuu'), 2)).toBe(1);
  });

  it('keeps an undo together with the redo that follows', () => {
    expect(cutPoint(kinds('dddurd'), 2)).toBe(2);
  });

  it('counts gestures and not lines: what was undone for good can be reached no more', () => {
    expect(cutPoint(kinds('ddddudududu'), 2)).toBe(2);
  });

  it('what followed by itself is no gesture of its own', () => {
    expect(cutPoint(kinds('dfdfdfdfdf'), 2)).toBe(5);
    expect(cutPoint(kinds('dddufrfd'), 2)).toBe(2);
  });

  it('never lets the kept lines undo or redo something that was cut away', () => {
    const histories = fc.array(fc.constantFrom<LineKind>('do', 'undo', 'redo')).map((wishes) => {
      let done = 0;
      let undone = 0;
      return wishes.filter((kind) => {
        if (kind === 'undo' && done === 0) return false;
        if (kind === 'redo' && undone === 0) return false;
        if (kind === 'do') undone = 0;
        done += kind === 'undo' ? -1 : 1;
        undone += kind === 'undo' ? 1 : kind === 'redo' ? -1 : 0;
        return true;
      });
    });
    let cuts = 0;
    fc.assert(
      fc.property(histories, fc.nat(20), (history, keep) => {
        const cut = cutPoint(history, keep);
        const kept = history.slice(cut);
        let done = 0;
        let undone = 0;
        for (const kind of kept) {
          if (kind === 'undo') expect(done).toBeGreaterThan(0);
          if (kind === 'redo') expect(undone).toBeGreaterThan(0);
          if (kind === 'do') undone = 0;
          done += kind === 'undo' ? -1 : 1;
          undone += kind === 'undo' ? 1 : kind === 'redo' ? -1 : 0;
        }
        if (cut === 0) return;
        cuts += 1;
        expect(done + undone).toBeGreaterThanOrEqual(keep);
      }),
      { numRuns: runs(300) },
    );
    expect(cuts).toBeGreaterThan(10);
  });
});
