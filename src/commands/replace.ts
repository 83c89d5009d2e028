import { replaceAll as replaceEverywhere } from '../book/make/replace.ts';
import { addressAt } from '../book/look.ts';
import { refused, type AnyCommand, type Command } from './command.ts';
import { carryOut } from './doing.ts';
import { sheetInView } from './selected.ts';

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
  name: 'Replace all',
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
      return refused(`"${text}" is nowhere ${everywhere ? 'in this book' : 'on this sheet'}.`);
    }
    const cells = result.replaced === 1 ? '1 cell' : `${result.replaced} cells`;
    const [first] = result.unread;
    const left = first
      ? ` ${result.unread.length} left as before; ${addressAt(first)}: ${first.reason}`
      : '';
    return carryOut(context, result, `Replaced in ${cells}.${left}`);
  },
};

export const find: AnyCommand = {
  id: 'edit.find',
  name: 'Find and replace',
  group: 'edit',
  keys: ['Ctrl+F', 'Ctrl+H'],
  search: ['search'],
  asks: 'replace',
  run: () => ({ ok: true }),
};
