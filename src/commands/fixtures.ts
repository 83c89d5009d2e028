import {
  addFixtures,
  changeFixture,
  removeFixture,
  renameFixture,
  type NewFixture,
} from '../book/make/fixtures.ts';
import { fixturesOf } from '../book/fixtures.ts';
import { done, type AnyCommand, type Command } from './command.ts';
import { carryOut } from './doing.ts';

interface OfFixture {
  readonly fixture: string;
}

/** The list of the book’s fixtures, from where they are added and removed. */
export const manage: AnyCommand = {
  id: 'fixtures.manage',
  name: 'Fixtures',
  group: 'book',
  search: ['photometric file', 'ies', 'ldt', 'lamp', 'luminaire', 'add a fixture', 'import'],
  asks: 'fixtures',
  run: () => done,
};

/** One or several, from files or typed in: one gesture. */
export const add: Command<{ readonly fixtures: readonly NewFixture[] }> = {
  id: 'fixtures.add',
  name: 'Add fixtures',
  group: 'book',
  run: (context, { fixtures }) =>
    carryOut(context, addFixtures(context.book.document, context.means, fixtures)),
};

export const change: Command<OfFixture & { readonly to: NewFixture }> = {
  id: 'fixtures.change',
  name: 'Change a fixture',
  group: 'book',
  run: (context, { fixture, to }) =>
    carryOut(context, changeFixture(context.book.document, fixture, to)),
};

export const rename: Command<OfFixture & { readonly name: string }> = {
  id: 'fixtures.rename',
  name: 'Rename a fixture',
  group: 'book',
  run(context, { fixture, name }) {
    const before = fixturesOf(context.book.document).find(({ id }) => id === fixture);
    const say = before && `Formulas and rigs that say “${before.name}” are left as they are.`;
    return carryOut(context, renameFixture(context.book.document, fixture, name), say);
  },
};

export const remove: Command<OfFixture> = {
  id: 'fixtures.remove',
  name: 'Remove a fixture',
  group: 'book',
  run: (context, { fixture }) =>
    carryOut(
      context,
      removeFixture(context.book.document, fixture),
      'Removed the fixture. Formulas that name it say so.',
    ),
};

export const fixtureCommands: readonly AnyCommand[] = [manage, add, change, rename, remove];
