import { expect, it } from 'vitest';
import { fixturesOf } from '../../../src/book/fixtures.ts';
import { readBook } from '../../../src/book/form/read.ts';
import { writeBook } from '../../../src/book/form/write.ts';
import {
  addFixtures,
  changeFixture,
  removeFixture,
  renameFixture,
} from '../../../src/book/make/fixtures.ts';
import { candelaOf, wattsOf } from '../../../functions/fixture/fixture.ts';
import { fixtureOf } from '../../../src/files/photometric/shelf.ts';
import { openBook } from '../engine/support/openBook.ts';

const spot = { name: 'Key', kind: 'spot', lux: 2000, distance: 3, beam: 20, field: 40 } as const;
const bulb =
  'IESNA:LM-63-2002\n[LUMINAIRE] Bulb\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 60\n0 180\n0\n100 100\n';
const panel = { name: 'Fill', kind: 'panel', width: 1, height: 0.5, luminance: 4000 } as const;

function opened() {
  const book = openBook({ Rig: [[]] });
  const names = () => fixturesOf(book.document).map(({ name }) => name);
  return { ...book, names };
}

it('several fixtures are one gesture, and a name that is taken gets a number', () => {
  const { document, means, must, names, book } = opened();
  must(addFixtures(document, means, [spot, panel, { ...spot, name: ' key ' }]));
  expect(names()).toEqual(['Fill', 'Key', 'key 2']);
  book.undo();
  expect(names()).toEqual([]);
});

it('a fixture is renamed, changed and removed; a name is not given twice', () => {
  const { document, means, must, names } = opened();
  must(addFixtures(document, means, [spot, panel]));
  const [fill, key] = fixturesOf(document);
  expect(renameFixture(document, key!.id, 'FILL')).toEqual({
    ok: false,
    reason: '“Fill” is already a fixture of this book.',
  });
  expect(renameFixture(document, key!.id, '  ')).toMatchObject({ ok: false });
  must(renameFixture(document, key!.id, 'Fresnel'));
  must(changeFixture(document, fill!.id, { ...panel, luminance: 2000 }));
  expect(fixturesOf(document)[0]).toMatchObject({ name: 'Fill', luminance: 2000 });
  must(removeFixture(document, fill!.id));
  expect(names()).toEqual(['Fresnel']);
  expect(removeFixture(document, fill!.id)).toMatchObject({ ok: false });
});

it('a change gives another name too, unless that is taken; a file keeps its light', () => {
  const { document, means, must, names, book } = opened();
  const file = { name: 'Bulb', kind: 'file', file: 'b.ies', text: bulb, hash: 'h' } as const;
  must(addFixtures(document, means, [spot, panel, file]));
  const [one, fill] = fixturesOf(document);
  expect(changeFixture(document, fill!.id, { ...panel, name: 'key' })).toEqual({
    ok: false,
    reason: '“Key” is already a fixture of this book.',
  });
  must(changeFixture(document, fill!.id, { ...panel, name: 'Frame', note: 'torn corner' }));
  expect(names()).toEqual(['Bulb', 'Frame', 'Key']);
  must(changeFixture(document, one!.id, { ...file, watts: 35, note: 'spare lamp' }));
  const [changed] = document.shelf('fixtures').items.filter(({ id }) => id === one!.id);
  const read = fixtureOf(changed!);
  if (typeof read !== 'object') throw new Error(read);
  expect([wattsOf(read), candelaOf(read, 0, 0)]).toEqual([35, 100]);
  book.undo();
  book.undo();
  expect(names()).toEqual(['Bulb', 'Fill', 'Key']);
});

it('a book with fixtures is written and read the same', () => {
  const { document, means, must } = opened();
  must(addFixtures(document, means, [spot, panel]));
  const read = readBook(writeBook(document));
  if (!read.ok) throw new Error(read.reason);
  expect(fixturesOf(read.document)).toEqual(fixturesOf(document));
});

it('what is no fixture is kept and not listed: a field within the beam, a size of none', () => {
  const { document, means, must, book } = opened();
  must(
    addFixtures(document, means, [
      { ...spot, field: 10 },
      { ...panel, width: 0 },
    ]),
  );
  expect(fixturesOf(document)).toEqual([]);
  expect(book.document.shelf('fixtures').items).toHaveLength(2);
});
