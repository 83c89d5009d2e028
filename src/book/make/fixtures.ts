import { fixturesOf, type KeptFixture } from '../fixtures.ts';
import type { Document, Id, Means } from '../types.ts';
import { made, type Made } from './made.ts';
import { addTo, removeFrom, renameOn, type Shelving } from './shelf.ts';
import { words } from '../../words/words.ts';

type Without<T> = T extends unknown ? Omit<T, 'id'> : never;

/** A fixture that is to be kept; its name may still be taken. */
export type NewFixture = Without<KeptFixture>;

const shelving: Shelving = {
  shelf: 'fixtures',
  all: fixturesOf,
  said: {
    one: words.book.fixture,
    none: words.book.noFixture,
    gone: words.book.fixtureGone,
    unnamed: words.book.fixtureUnnamed,
    addOne: words.book.addFixture,
    addSome: words.book.addFixtures,
    there: words.book.fixtureThere,
    renameOne: words.book.renameFixture,
    removeOne: words.book.removeFixture,
  },
};

export const addFixtures = (
  document: Document,
  means: Pick<Means, 'newId'>,
  fixtures: readonly NewFixture[],
): Made => addTo(shelving, document, means, fixtures);

export const renameFixture = (document: Document, id: Id, name: string): Made =>
  renameOn(shelving, document, id, name);

/** Another entry in place of one, under its name or another. */
export function changeFixture(document: Document, id: Id, fixture: NewFixture): Made {
  const renamed = renameOn(shelving, document, id, fixture.name);
  if (!renamed.ok) return renamed;
  const before = fixturesOf(document).find((one) => one.id === id);
  const item = { ...fixture, name: fixture.name.trim(), id };
  return made(words.book.changeFixture(before?.name ?? item.name), [
    { kind: 'setShelf', shelf: 'fixtures', items: [{ id, item }] },
  ]);
}

export const removeFixture = (document: Document, id: Id): Made =>
  removeFrom(shelving, document, id);
