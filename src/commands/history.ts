import { spotOf } from '../book/look.ts';
import type { Change } from '../book/types.ts';
import { refused, type Command, type Context, type Outcome } from './command.ts';

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

function after(context: Context, change: Change | null, said: string, nothing: string): Outcome {
  if (!change) return refused(nothing);
  goTo(context, change);
  return { ok: true, say: `${said}: ${change.transaction.label}` };
}

export const undo: Command = {
  id: 'edit.undo',
  name: 'Undo',
  group: 'edit',
  keys: ['Ctrl+Z'],
  search: ['take back'],
  unavailable: ({ book }) =>
    book.history.done.length > 0 ? undefined : 'There is nothing to undo.',
  run: (context) => after(context, context.book.undo(), 'Undid', 'There is nothing to undo.'),
};

export const redo: Command = {
  id: 'edit.redo',
  name: 'Redo',
  group: 'edit',
  keys: ['Ctrl+Shift+Z', 'Ctrl+Y'],
  unavailable: ({ book }) =>
    book.history.undone.length > 0 ? undefined : 'There is nothing to redo.',
  run: (context) => after(context, context.book.redo(), 'Redid', 'There is nothing to redo.'),
};
