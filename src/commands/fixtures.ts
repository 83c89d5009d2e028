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
import { words } from '../words/words.ts';

interface OfFixture {
  readonly fixture: string;
}

/** The list of the book’s fixtures, from where they are added and removed. */
export const manage: AnyCommand = {
  id: 'fixtures.manage',
  name: words.commands.fixtures,
  group: 'book',
  search: ['photometric file', 'ies', 'ldt', 'lamp', 'luminaire', 'add a fixture', 'import'],
  asks: 'fixtures',
  run: () => done,
};

/** One or several, from files or typed in: one gesture. */
export const add: Command<{ readonly fixtures: readonly NewFixture[] }> = {
  id: 'fixtures.add',
  name: words.commands.addFixtures,
  group: 'book',
  run: (context, { fixtures }) =>
    carryOut(context, addFixtures(context.book.document, context.means, fixtures)),
};

export const change: Command<OfFixture & { readonly to: NewFixture }> = {
  id: 'fixtures.change',
  name: words.commands.changeFixture,
  group: 'book',
  run(context, { fixture, to }) {
    const before = fixturesOf(context.book.document).find(({ id }) => id === fixture);
    const renamed = before && before.name !== to.name.trim();
    const say = renamed && words.commands.renamedFixture(before.name);
    return carryOut(context, changeFixture(context.book.document, fixture, to), say || undefined);
  },
};

export const rename: Command<OfFixture & { readonly name: string }> = {
  id: 'fixtures.rename',
  name: words.commands.renameFixture,
  group: 'book',
  run(context, { fixture, name }) {
    const before = fixturesOf(context.book.document).find(({ id }) => id === fixture);
    const say = before && words.commands.renamedFixture(before.name);
    return carryOut(context, renameFixture(context.book.document, fixture, name), say);
  },
};

export const remove: Command<OfFixture> = {
  id: 'fixtures.remove',
  name: words.commands.removeFixture,
  group: 'book',
  run: (context, { fixture }) =>
    carryOut(context, removeFixture(context.book.document, fixture), words.commands.removedFixture),
};

export const fixtureCommands: readonly AnyCommand[] = [manage, add, change, rename, remove];
