import { readFileSync, readdirSync } from 'node:fs';
import { describe, expect, it, test } from 'vitest';
import { readBase, writeBase } from '../../../src/book/form/remains.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import type { Book } from '../../../src/book/types.ts';
import { foldPages, rawText, readPages } from '../../../src/storage/pages.ts';
import type { KeptPages } from '../../../src/storage/store.ts';
import { playRandomMove } from '../../fuzz/book/moves.ts';
import { Pair } from '../../fuzz/book/pair.ts';
import { Random } from '../../fuzz/book/random.ts';
import { runs } from '../../support/runs.ts';

const first = Number(process.env['SEED'] ?? 7_031);
const seeds = Array.from({ length: runs(3, 60) }, (_, i) => first + i);

/** A long random working day: inserting, deleting, moving, cutting, renaming, undoing. */
function workingDay(seed: number, moves: number): KeptPages {
  const pair = new Pair();
  const base = writeBase(pair.document);
  const random = new Random(seed);
  for (let move = 0; move < moves; move++) playRandomMove(pair, random);
  if (!base) throw new Error('The new book does not read back.');
  return { snapshot: base, journal: pair.journal };
}

function opened(pages: KeptPages): Book {
  const read = readPages(pages);
  if (!read.ok) throw new Error(read.reason);
  return read.book;
}

/** The text of the book after each undo, back to where nothing is left to undo. */
function backwards(book: Book, most: number): string[] {
  const texts: string[] = [];
  while (texts.length < most && book.undo()) texts.push(writeBook(book.document));
  return texts;
}

describe('folding the first lines of a journal into the snapshot', () => {
  test.each(seeds)('day %i: the same book, and undo goes through the same books', (seed) => {
    const pages = workingDay(seed, 700);
    const folded = foldPages(pages, 150);
    if (!folded) expect.fail('Nothing was folded.');
    expect(folded.lines).toBeGreaterThan(0);
    const rest = { snapshot: folded.snapshot, journal: pages.journal.slice(folded.lines) };
    expect(rest.journal.length).toBeGreaterThanOrEqual(150);

    const [before, after] = [opened(pages), opened(rest)];
    expect(writeBook(after.document)).toBe(writeBook(before.document));
    const undone = backwards(after, Infinity);
    expect(backwards(before, undone.length)).toEqual(undone);
    while (after.redo());
    while (before.history.undone.length > 0) before.redo();
    expect(writeBook(after.document)).toBe(writeBook(before.document));
  });

  it('keeps deleted lines where ranges end in them and new lines stand beside them', () => {
    for (const seed of seeds) {
      const pages = workingDay(seed, 700);
      const folded = foldPages(pages, 150);
      if (!folded?.snapshot.remains) continue;
      const bare = { text: folded.snapshot.text, remains: null };
      const read = readPages({ snapshot: bare, journal: pages.journal.slice(folded.lines) });
      if (!read.ok || writeBook(read.book.document) !== writeBook(opened(pages).document)) return;
    }
    expect.fail('No day needed what the form of the file leaves out.');
  });

  it('leaves a journal alone that is damaged, or too short', () => {
    const pages = workingDay(first, 300);
    const { journal } = pages;
    expect(foldPages({ ...pages, journal: journal.with(3, '{"kind":"do"}') }, 50)).toBeUndefined();
    expect(foldPages({ ...pages, journal: journal.with(-9, '{"kind":"do"}') }, 50)).toBeUndefined();
    expect(foldPages(pages, journal.length)).toBeUndefined();
    expect(foldPages(pages, 50)).toBeDefined();
  });
});

describe('the base of a journal', () => {
  const folder = new URL('../../../templates/', import.meta.url);
  const names = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => name);

  test.each(names)('the book %s is told whole by the form of its file', (name) => {
    const read = readBook(readFileSync(new URL(`${name}/book.json`, folder), 'utf8'));
    if (!read.ok) expect.fail(read.reason);
    const base = writeBase(read.document);
    expect(base?.remains).toBeNull();
    const again = base && readBase(base);
    expect(again?.ok && writeBook(again.document)).toBe(writeBook(read.document));
  });
});

describe('pages that are damaged', () => {
  const pages = workingDay(first, 60);
  const { snapshot, journal } = pages;
  const before = (lines: number) =>
    writeBook(opened({ snapshot, journal: journal.slice(0, lines) }).document);

  it('a last line that is half written is left out, and the rest is there', () => {
    const last = journal.at(-1) ?? '';
    const cut = journal.with(-1, last.slice(0, last.length / 2));
    const read = readPages({ snapshot, journal: cut });
    if (!read.ok) expect.fail(read.reason);
    expect(read.cutShort).toBe(true);
    expect(writeBook(read.book.document)).toBe(before(journal.length - 1));
  });

  it('a last line that says what is not known here is not taken for half written', () => {
    const read = readPages({ snapshot, journal: [...journal, '{"kind":"do","later":1}'] });
    expect(read).toMatchObject({ ok: false, done: journal.length });
  });

  it('a line damaged in their midst stops them there, and says so', () => {
    const read = readPages({ snapshot, journal: journal.with(20, '{"ki') });
    expect(read).toMatchObject({ ok: false, done: 20 });
    expect(read.ok ? '' : read.reason).toMatch(/line 21/);
  });

  it('a damaged snapshot and one of a newer version are told apart', () => {
    const reasonOf = (text: string) => {
      const read = readPages({ snapshot: { text, remains: null }, journal });
      return read.ok ? '' : read.reason;
    };
    expect(reasonOf(snapshot.text.slice(0, 200))).toMatch(/damaged/);
    expect(reasonOf(snapshot.text.replace('"version": 1', '"version": 99'))).toMatch(/newer/);
  });

  it('what stands beside the snapshot is looked at as closely', () => {
    for (const remains of ['{"ki', '{"kind":"undo"}', 'null'])
      expect(readPages({ snapshot: { ...snapshot, remains }, journal }).ok).toBe(false);
  });

  it('all of it can be had as it lies there', () => {
    const raw = rawText({ snapshot: { text: '{damaged', remains: null }, journal: ['a', 'b'] });
    expect(raw).toBe('{damaged\na\nb');
  });
});
