import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { writeBook } from '../../../src/book/form/write.ts';
import { work, type TeachDone, type TeachTask } from '../../../src/teach/work.ts';
import { answered, exactly, file, handedOut, marked, names } from './class.ts';

const stops = handedOut('stops');
const { klass } = stops;
const book = writeBook(stops.document);

/** What a task comes to, and how far it said to be on the way, as a thread would send both. */
function worked(task: TeachTask): { readonly shares: number[]; readonly done: TeachDone } {
  const shares: number[] = [];
  const doing = work(structuredClone(task));
  let step = doing.next();
  for (; !step.done; step = doing.next()) shares.push(step.value);
  return { shares, done: structuredClone(step.value) };
}

const rises = (shares: readonly number[]) => {
  expect(shares.every((share, index) => share > (shares[index - 1] ?? 0))).toBe(true);
  expect(shares.at(-1)).toBeCloseTo(1, 12);
};

describe('what is done for a class on another thread', () => {
  it('hands out one zip file of the books that are made one by one, and says how far it is', () => {
    const made = new Date(2026, 10, 29);
    const { shares, done } = worked({ kind: 'handOut', book, klass, made });
    rises(shares);
    expect(shares).toHaveLength(names.length);
    if (done.kind !== 'handOut') throw new Error(done.kind);
    expect(done).toMatchObject({ count: names.length, alike: [] });
    const zip = Object.entries(unzipSync(done.zip)).map(([name, bytes]) => [
      name,
      new TextDecoder().decode(bytes),
    ]);
    expect(Object.fromEntries(zip)).toEqual(
      Object.fromEntries(stops.files.map(({ name, text }) => [name, text])),
    );
  });

  it('draws what goes on paper, without the books', () => {
    const { done } = worked({ kind: 'draw', book, klass });
    const expected = stops.files.map(({ text: _text, ...one }) => one);
    expect(done).toEqual({ kind: 'draw', files: expected });
  });

  it('marks as marking does, and says how far it is through the drawing and the files', () => {
    const files = stops.files.map((one) => file(one.name, answered(stops, one, exactly(one))));
    const { shares, done } = worked({ kind: 'mark', book, klass, files });
    rises(shares);
    expect(shares).toHaveLength(names.length + files.length);
    expect(done).toEqual({ kind: 'mark', marked: structuredClone(marked(stops, files)) });
  });

  it('is refused with a sentence where it cannot be done', () => {
    const refusal = (task: TeachTask) => {
      const { done } = worked(task);
      return done.kind === 'refused' ? done.reason : done.kind;
    };
    const other = { ...klass, exercise: 'none' };
    expect(refusal({ kind: 'draw', book, klass: other })).toBe(
      'There is no exercise on this sheet.',
    );
    const condition = stops.exercise.conditions[0]!;
    const never = {
      ...condition,
      pieces: condition.pieces.map((one) => one.replace('>=1', '>99')),
    };
    const impossible = book.replace(JSON.stringify(condition.pieces), JSON.stringify(never.pieces));
    expect(impossible).not.toBe(book);
    expect(refusal({ kind: 'mark', book: impossible, klass, files: [] })).toMatch(
      /^No numbers were found that will do, in 400 draws\. Condition 1/,
    );
    expect(refusal({ kind: 'draw', book: '{', klass })).not.toBe('draw');
  });
});
