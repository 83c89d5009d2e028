import { spotOf } from '../book/look.ts';
import type { Change } from '../book/types.ts';
import { refused, type Command, type Context, type Outcome } from './command.ts';
import { words } from '../words/words.ts';

/** Takes the eye to where something changed. */
function goTo({ book, session }: Context, { transaction }: Change): void {
  const { go } = transaction;
  if (!go) return;
  const corner = (row: string | undefined, column: string | undefined) =>
    row !== undefined && column !== undefined
      ? spotOf(book.document, { sheet: go.sheet, row, column })
      : undefined;
  const from = corner(go.rows[0], go.columns[0]);
  const to = corner(go.rows.at(-1), go.columns.at(-1));
  if (!from) return;
  session.show(go.sheet);
  session.selectBlock({
    from: { row: from.row, column: from.column },
    to: { row: to?.row ?? from.row, column: to?.column ?? from.column },
  });
}

function after(
  context: Context,
  change: Change | null,
  said: (label: string) => string,
  nothing: string,
): Outcome {
  if (!change) return refused(nothing);
  goTo(context, change);
  return { ok: true, say: said(change.transaction.label) };
}

export const undo: Command = {
  id: 'edit.undo',
  name: words.commands.undo,
  group: 'edit',
  keys: ['Ctrl+Z'],
  search: ['take back'],
  unavailable: ({ book }) =>
    book.history.done.length > 0 ? undefined : words.commands.nothingToUndo,
  run: (context) =>
    after(context, context.book.undo(), words.commands.undone, words.commands.nothingToUndo),
};

export const redo: Command = {
  id: 'edit.redo',
  name: words.commands.redo,
  group: 'edit',
  keys: ['Ctrl+Shift+Z', 'Ctrl+Y'],
  unavailable: ({ book }) =>
    book.history.undone.length > 0 ? undefined : words.commands.nothingToRedo,
  run: (context) =>
    after(context, context.book.redo(), words.commands.redone, words.commands.nothingToRedo),
};
