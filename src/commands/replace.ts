import { replaceAll as replaceEverywhere } from '../book/make/replace.ts';
import { addressAt } from '../book/look.ts';
import { refused, type AnyCommand, type Command } from './command.ts';
import { carryOut } from './doing.ts';
import { sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

interface Replacing {
  readonly text: string;
  readonly by: string;
  readonly matchCase: boolean;
  readonly whole: boolean;
  readonly everywhere: boolean;
}

/** Replaces in what was typed, formulas too; each text is read anew. */
export const replaceAll: Command<Replacing> = {
  id: 'edit.replaceAll',
  name: words.commands.replaceAll,
  group: 'edit',
  run(context, { text, by, matchCase, whole, everywhere }) {
    const within = everywhere ? {} : { within: { sheet: sheetInView(context).id } };
    const result = replaceEverywhere(
      context.book.document,
      context.means,
      { find: text, matchCase, whole, inFormulas: true, ...within },
      by,
    );
    if (result.replaced === 0 && result.unread.length === 0) {
      return refused(words.commands.nowhere(text, everywhere));
    }
    const { replaced, unread } = result;
    const [first] = unread;
    const said = first
      ? words.commands.replacedAndLeft(replaced, unread.length, addressAt(first), first.reason)
      : words.commands.replaced(replaced);
    return carryOut(context, result, said);
  },
};

export const find: AnyCommand = {
  id: 'edit.find',
  name: words.commands.find,
  group: 'edit',
  keys: ['Ctrl+F', 'Ctrl+H'],
  search: ['search'],
  asks: 'replace',
  run: () => ({ ok: true }),
};
