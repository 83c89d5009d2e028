import { readFileSync } from 'node:fs';
import { createBook } from '../../../src/book/book.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book } from '../../../src/book/types.ts';
import { readAddress } from '../../../src/book/look.ts';
import { enter } from '../../../src/book/make/enter.ts';
import { connectEngine } from '../../../src/engine/index.ts';
import { readWalk } from '../../../src/files/walk.ts';
import { fixturesIn } from '../../../src/files/photometric/shelf.ts';
import type { Look } from '../../../src/panels/views/look.ts';
import { recordOf, type RecordedAs } from '../../../src/repeat/record.ts';
import { fillWalk } from '../../../src/walk/fill.ts';
import { planMeans, run } from '../../../templates/build.ts';
import { readBook } from '../../../src/book/form/read.ts';

export const walk = (name: string) =>
  readFileSync(new URL(`../../support/walks/${name}.csv`, import.meta.url), 'utf8');

export const as: RecordedAs = {
  name: 'Sail loft',
  place: 'Sail loft, first floor',
  date: '2026-09-23',
  time: '14:05',
};

/** The sample book: the walks of loft and shed are taken in on its first two sheets. */
export function harbour() {
  const file = new URL('../../../templates/harbour-hours/book.json', import.meta.url);
  const read = readBook(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  return opened(createBook(read.document));
}

export function opened(book: Book) {
  const engine = connectEngine(book, { fixtures: fixturesIn });
  let minted = 0;
  const means = { ...planMeans(), newId: () => `made${minted++}` };
  const { document } = book;
  const look: Look = {
    document,
    engine,
    writing: writingSettings(document.settings),
    remarksAt: () => [],
  };
  const idOf = (name: string) => document.sheetNamed(name)?.id ?? '';
  const placeOf = (sheet: string, cell: string) => {
    const at = readAddress(cell);
    if (!at) throw new Error(cell);
    return { sheet: idOf(sheet), ...at };
  };
  return {
    book,
    document,
    engine,
    means,
    look,
    idOf,
    valueOf: (sheet: string, cell: string) => engine.valueOf(placeOf(sheet, cell)),
    type: (sheet: string, cell: string, text: string) =>
      run(book, enter(document, means, [{ ...placeOf(sheet, cell), text }])),
    takeWalk(sheet: string, text: string) {
      const read = readWalk(text);
      if ('reason' in read) throw new Error(read.reason);
      const { made, says } = fillWalk(document, means, idOf(sheet), read);
      run(book, made);
      return says;
    },
    record(sheet: string, told: Partial<RecordedAs> = {}) {
      const made = recordOf(look, idOf(sheet), { ...as, ...told });
      if (!made.ok) throw new Error(made.reason);
      return made.record;
    },
  };
}
