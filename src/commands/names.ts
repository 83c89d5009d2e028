import { defineName, removeName, renameName, type MadeName } from '../book/make/names.ts';
import type { AnyCommand, Command } from './command.ts';
import { carryOut } from './doing.ts';
import { sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

/** Refusals offer a name that would do. */
function offered(made: MadeName): MadeName {
  if (made.ok || !('offer' in made) || made.offer === undefined) return made;
  return { ok: false, reason: words.commands.nameOffered(made.reason, String(made.offer)) };
}

/** Names a cell, a range or a formula. */
export const define: Command<{ readonly name: string; readonly meaning: string }> = {
  id: 'names.define',
  name: words.commands.nameCell,
  group: 'names',
  run(context, { name, meaning }) {
    const text = meaning.startsWith('=') ? meaning : `=${meaning}`;
    const own = sheetInView(context).id;
    return carryOut(
      context,
      offered(defineName(context.book.document, context.means, name, { text, own })),
    );
  },
};

export const rename: Command<{ readonly id: string; readonly name: string }> = {
  id: 'names.rename',
  name: words.commands.renameName,
  group: 'names',
  run: (context, { id, name }) =>
    carryOut(context, offered(renameName(context.book.document, context.means, id, name))),
};

export const remove: Command<{ readonly id: string }> = {
  id: 'names.delete',
  name: words.commands.deleteName,
  group: 'names',
  run: (context, { id }) => carryOut(context, removeName(context.book.document, id)),
};

export const manage: AnyCommand = {
  id: 'names.manage',
  name: words.commands.namesOfBook,
  group: 'names',
  search: ['named cells', 'ranges'],
  asks: 'names',
  run: () => ({ ok: true }),
};
