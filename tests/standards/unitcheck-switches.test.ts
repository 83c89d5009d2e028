import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBook } from '../../src/book/book.ts';
import { readBook } from '../../src/book/form/read.ts';
import { writeBook } from '../../src/book/form/write.ts';
import type { Settings } from '../../src/book/types.ts';
import { connectEngine } from '../../src/engine/index.ts';

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

type Opened = ReturnType<typeof open>;

function set({ book }: Opened, settings: Partial<Settings>): void {
  const ran = book.run({ label: 'Switch', steps: [{ kind: 'setSettings', settings }] });
  if (!ran.ok) throw new Error(ran.reason);
}

/** The file without its settings. */
function rest(file: string): string {
  const { settings: _, ...others } = JSON.parse(file) as Record<string, unknown>;
  return JSON.stringify(others);
}

/** Every number and truth of the book; words may say a number in the book's unit. */
function values({ book, engine }: Opened) {
  return book.document.sheets.flatMap(({ id, rows, columns }) =>
    rows.ids.flatMap((_, row) =>
      columns.ids.map((__, column) => {
        const value = engine.valueOf({ sheet: id, row, column });
        return typeof value === 'number' || typeof value === 'boolean' ? value : null;
      }),
    ),
  );
}

/** Each switch people argue about, and all of them at once. */
const switches: readonly (readonly [words: string, to: Partial<Settings>])[] = [
  ['footcandles', { illuminance: 'fc' }],
  ['feet', { length: 'ft' }],
  ['shutter angles', { shutter: 'angle' }],
  ['f-numbers in halves', { fNumber: 'halves' }],
  ['f-numbers in tenths', { fNumber: 'tenths' }],
  ['f-numbers as decimals', { fNumber: 'decimals' }],
  ['decimal commas', { decimal: ',' }],
  ['a 12-hour clock', { clock: '12' }],
  [
    'everything else at once',
    {
      ...{ illuminance: 'fc', length: 'ft', shutter: 'angle', fNumber: 'tenths' },
      ...{ decimal: ',', clock: '12' },
    },
  ],
];

describe.each(names)('in %s', (name) => {
  it.each(switches)('%s change no number, and in the file nothing but the setting', (_, to) => {
    const opened = open(name);
    const before = writeBook(opened.book.document);
    const numbers = values(opened);
    const { settings } = opened.book.document;
    const back = Object.fromEntries(
      Object.keys(to).map((key) => [key, settings[key as keyof Settings]]),
    );
    set(opened, to);
    const switched = writeBook(opened.book.document);
    expect(switched).not.toBe(before);
    expect(rest(switched)).toBe(rest(before));
    expect(values(opened)).toEqual(numbers);
    set(opened, back);
    expect(writeBook(opened.book.document)).toBe(before);
    expect(values(opened)).toEqual(numbers);
  });
});
