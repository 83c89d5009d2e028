import { describe, expect, test } from 'vitest';
import { replay } from '../../../src/book/form/journal.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { playRandomMove } from '../../fuzz/book/moves.ts';
import { Pair } from '../../fuzz/book/pair.ts';
import { Random } from '../../fuzz/book/random.ts';
import { runs } from '../../support/runs.ts';

const movesEach = 2500;
const wanted = runs(10_000, 1_000_000);
const first = Number(process.env['SEED'] ?? 20_261);
const seeds = Array.from({ length: wanted / movesEach }, (_, i) => first + i);

function opened(text: string) {
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  return read.document;
}

describe(`${String(wanted)} random moves, book and plain model side by side`, () => {
  test.each(seeds)(
    'seed %i: equal at each step, to the start and back, from file and journal',
    (seed) => {
      const pair = new Pair();
      const random = new Random(seed);
      const start = writeBook(pair.document);
      for (let step = 0; step < movesEach; step++) {
        const move = playRandomMove(pair, random);
        const only = step % 25 === 0 ? undefined : random.below(pair.sheets.length);
        const differences = pair.differences(only);
        if (differences.length > 0)
          expect.fail(
            `seed ${String(seed)}, step ${String(step)} (${move}):\n${differences.join('\n')}`,
          );
        if (step % 250 === 0) {
          const text = writeBook(pair.document);
          expect(writeBook(opened(text)), 'a file read and written is the same file').toBe(text);
        }
      }
      expect(pair.book.history.done.length).toBeGreaterThan(movesEach / 4);
      const end = writeBook(pair.document);
      const undone = pair.book.history.undone.length;

      const again = replay(opened(start), pair.journal);
      if (!again.ok) expect.fail(again.reason);
      expect(writeBook(again.book.document), 'the journal tells the same book').toBe(end);

      for (const book of [pair.book, again.book]) {
        while (book.undo());
        expect(writeBook(book.document), 'undone to the start').toBe(start);
      }
      for (let i = again.book.history.undone.length; i > undone; i--) pair.book.redo();
      expect(writeBook(pair.document), 'redone to where it was').toBe(end);
      while (pair.book.redo());
      const all = writeBook(pair.document);
      while (again.book.redo());
      expect(writeBook(again.book.document), 'redone to the end').toBe(all);
      expect(pair.book.history.undone).toEqual([]);
    },
  );
});
