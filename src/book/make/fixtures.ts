import { fixturesOf, keyOf, type KeptFixture } from '../fixtures.ts';
import type { Document, Id, Means, ShelfItem } from '../types.ts';
import { freeName, longestName } from './freeName.ts';
import { made, refused, type Made } from './made.ts';
import { words } from '../../words/words.ts';

type Without<T> = T extends unknown ? Omit<T, 'id'> : never;

/** A fixture that is to be kept; its name may still be taken. */
export type NewFixture = Without<KeptFixture>;

/** Puts fixtures on the shelf. A name that is taken gets a number behind it. */
export function addFixtures(
  document: Document,
  means: Pick<Means, 'newId'>,
  fixtures: readonly NewFixture[],
): Made {
  const [first] = fixtures;
  if (!first) return refused(words.book.noFixture);
  const taken = new Set(fixturesOf(document).map(({ name }) => keyOf(name)));
  const items = fixtures.map((fixture): ShelfItem => {
    const name = freeName(fixture.name, taken, words.book.fixture);
    taken.add(keyOf(name));
    return { ...fixture, name, id: means.newId() };
  });
  const label =
    items.length === 1 ? words.book.addFixture(first.name) : words.book.addFixtures(items.length);
  return made(label, [
    { kind: 'setShelf', shelf: 'fixtures', items: items.map((item) => ({ id: item.id, item })) },
  ]);
}

/** Another name. Formulas that look the old one up say that it is gone. */
export function renameFixture(document: Document, id: Id, name: string): Made {
  const fixture = fixturesOf(document).find((one) => one.id === id);
  if (!fixture) return refused(words.book.fixtureGone);
  const wanted = name.trim();
  if (wanted === '') return refused(words.book.fixtureUnnamed);
  if (wanted.length > longestName) return refused(words.book.nameTooLong(longestName));
  const other = fixturesOf(document).find((one) => keyOf(one.name) === keyOf(wanted));
  if (other && other.id !== id) return refused(words.book.fixtureThere(other.name));
  if (wanted === fixture.name) return made(words.book.keepFixtureName(wanted), []);
  return put(words.book.renameFixture(fixture.name, wanted), { ...fixture, name: wanted });
}

/** Another entry in place of one that was typed in. */
export function changeFixture(document: Document, id: Id, fixture: NewFixture): Made {
  const before = fixturesOf(document).find((one) => one.id === id);
  if (!before) return refused(words.book.fixtureGone);
  return put(words.book.changeFixture(before.name), { ...fixture, name: before.name, id });
}

export function removeFixture(document: Document, id: Id): Made {
  const fixture = fixturesOf(document).find((one) => one.id === id);
  if (!fixture) return refused(words.book.fixtureGone);
  return made(words.book.removeFixture(fixture.name), [
    { kind: 'setShelf', shelf: 'fixtures', items: [{ id, item: null }] },
  ]);
}

function put(label: string, item: ShelfItem): Made {
  return made(label, [{ kind: 'setShelf', shelf: 'fixtures', items: [{ id: item.id, item }] }]);
}
