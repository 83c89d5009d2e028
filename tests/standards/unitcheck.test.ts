import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBook } from '../../src/book/book.ts';
import { readBook } from '../../src/book/form/read.ts';
import { createChecker } from '../../src/check/checker.ts';
import { checkBook, remarkLine } from '../../src/check/book.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { Mutations, randomFrom } from './unitcheck/mutations.ts';

const folder = new URL('../../templates/', import.meta.url);
const names = readdirSync(folder).filter((name) =>
  existsSync(new URL(`${name}/book.json`, folder)),
);

function open(name: string) {
  const read = readBook(readFileSync(new URL(`${name}/book.json`, folder), 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  return { book, engine: connectEngine(book) };
}

/** `SEED=7 npm test -- standards` tries the same swaps again. */
const seed = Number(process.env['SEED'] ?? 20_261_125);
const tries = 200;

describe('the unit check', () => {
  it('is tried on every template and sample book', () => {
    expect(names).toContain('harbour-hours');
    expect(names.length).toBeGreaterThanOrEqual(2);
  });

  it.each(names)('says nothing of %s', (name) => {
    const { book, engine } = open(name);
    const marks = checkBook(book.document, engine).filter(({ about }) => about === 'unit');
    expect(marks.map((remark) => remarkLine(book.document, remark))).toEqual([]);
  });

  it.each(names)('sees 95 of 100 swapped references in %s', (name) => {
    const { book, engine } = open(name);
    const checker = createChecker(book, engine);
    const isMarked = () => checker.remarks().some(({ about }) => about === 'unit');
    const mutations = new Mutations(book.document, engine);
    const random = randomFrom(seed);
    const missed: string[] = [];
    for (let count = 0; count < tries; count++) {
      const mutation = mutations.next(random);
      expect(isMarked()).toBe(false);
      const ran = book.run(mutation.transaction);
      expect(ran.ok).toBe(true);
      if (!isMarked()) missed.push(mutation.words);
      book.undo();
    }
    console.log(
      `${name}: ${String(tries - missed.length)} of ${String(tries)} seen, seed ${String(seed)}`,
      mutations.counts,
      missed,
    );
    expect(missed.length).toBeLessThanOrEqual(0.05 * tries);
  });
});
