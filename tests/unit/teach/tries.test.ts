import { expect, it } from 'vitest';
import { createBook } from '../../../src/book/book.ts';
import { handoutsOf } from '../../../src/book/exercises.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { keepTries, oneMoreTry } from '../../../src/teach/tries.ts';
import { countingMeans } from '../engine/support/openBook.ts';
import { handedOut } from './class.ts';

const [handed] = handedOut('stops', ['Mira Holm']).files;

function opened(text = handed?.text ?? '') {
  const read = readBook(text);
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  const stop = keepTries(book);
  const handout = () => handoutsOf(book.document)[0]!;
  const sheet = handout().sheet;
  const [first, second] = handout().questions.map(({ id }) => id);
  return {
    ...{ book, stop, first: first!, second: second! },
    tries: (id: string) => handout().tries[id] ?? 0,
    check: (id: string) => void book.follow([oneMoreTry(handout(), id)]),
    type(text: string) {
      const made = enter(book.document, countingMeans(), [{ sheet, row: 7, column: 1, text }]);
      if (!made.ok || !book.run(made.transaction).ok) throw new Error('Not typed.');
    },
    /** What follows from a change comes right after it. */
    settled: () => Promise.resolve(),
  };
}

it('keeps how often an answer was checked through any undo and redo', async () => {
  const { book, first, second, tries, check, type, settled } = opened();
  type('1');
  check(first);
  type('2');
  check(first);
  check(second);
  expect([tries(first), tries(second)]).toEqual([2, 1]);
  // Two answers were typed, and that is all there is to undo.
  for (const move of ['undo', 'undo', 'redo', 'undo', 'redo', 'redo'] as const) {
    expect(book[move]()).not.toBeNull();
    await settled();
    expect([tries(first), tries(second)]).toEqual([2, 1]);
  }
  expect(book.redo()).toBeNull();
  book.undo();
  await settled();
  check(first);
  expect(tries(first)).toBe(3);
  expect(book.redo()).not.toBeNull();
  await settled();
  expect(tries(first)).toBe(3);
});

it('counts on from what the file says, and lets go when the book is closed', async () => {
  const before = opened();
  before.check(before.first);
  const again = opened(writeBook(before.book.document));
  expect(again.tries(again.first)).toBe(1);
  again.type('3');
  again.check(again.first);
  again.stop();
  again.book.undo();
  await again.settled();
  expect(again.tries(again.first)).toBe(1);
});
