import { describeSheet } from '../book/make/sheets.ts';
import type { RowFilter } from '../book/types.ts';
import { refused, type AnyCommand, type Command, type Context, type Outcome } from './command.ts';
import { carryOut } from './doing.ts';
import { columnAround, type FilterColumn } from './filtered.ts';
import { sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

/** The column of the selected cell, where it stands in a table. */
export function columnHere(context: Context): FilterColumn | undefined {
  const { book, engine, session } = context;
  const { focus } = session.state.selection;
  return columnAround({ document: book.document, engine }, sheetInView(context), focus);
}

function put(context: Context, filter: RowFilter | null, label: string): Outcome {
  const { document } = context.book;
  return carryOut(context, describeSheet(document, sheetInView(context).id, { filter }, label));
}

/** Leaves rows out of view by what they show in the column of the selected cell. */
export const filterRows: Command<{ readonly hides: readonly string[] }> = {
  id: 'rows.filter',
  name: words.filter.name,
  group: 'rows',
  keys: ['Alt+Shift+F'],
  search: ['hide', 'only', 'table'],
  run(context, { hides }) {
    const here = columnHere(context);
    if (!here) return refused(words.filter.noTable);
    const { head, column, caption } = here;
    if (hides.length === 0) return put(context, null, words.filter.showAll);
    const filter = { head, column, hides: [...hides].sort() };
    const outcome = put(context, filter, words.filter.by(caption));
    if (outcome.ok) stayInView(context, here, hides);
    return outcome;
  },
};

/** Who stood in a row that is gone from view goes to the next one that is not. */
function stayInView({ session }: Context, here: FilterColumn, hides: readonly string[]): void {
  const { focus } = session.state.selection;
  const isSeen = ({ text }: { readonly text: string }) => !hides.includes(text);
  const own = here.rows.find(({ row }) => row === focus.row);
  const there =
    here.rows.find((one) => one.row > focus.row && isSeen(one)) ?? here.rows.findLast(isSeen);
  if (!own || isSeen(own) || !there) return;
  const spot = { row: there.row, column: focus.column };
  session.selectBlock({ from: spot, to: spot });
}

const onlyAlike: Command = {
  id: 'rows.onlyAlike',
  name: words.filter.alike,
  group: 'rows',
  search: ['filter', 'hide'],
  run(context) {
    const here = columnHere(context);
    if (!here) return refused(words.filter.noTable);
    const { row } = context.session.state.selection.focus;
    const own = here.rows.find((one) => one.row === row)?.text;
    const others = here.rows.map(({ text }) => text).filter((text) => text !== own);
    return filterRows.run(context, { hides: [...new Set(others)] }) as Outcome;
  },
};

const showAllRows: Command = {
  id: 'rows.showAll',
  name: words.filter.showAll,
  group: 'rows',
  search: ['filter', 'hidden'],
  unavailable: (context) =>
    sheetInView(context).properties.filter ? undefined : words.filter.notFiltered,
  run: (context) => put(context, null, words.filter.showAll),
};

export const filterCommands: readonly AnyCommand[] = [filterRows, onlyAlike, showAllRows];
