import {
  addSheet,
  describeSheet,
  duplicateSheet,
  freeze as freezeLines,
  moveSheet,
  placeSheet,
  removeSheet,
} from '../book/make/sheets.ts';
import type { Figure } from '../book/figures.ts';
import { fixturesOf, keyOf, type KeptFixture } from '../book/fixtures.ts';
import { addFixtures } from '../book/make/fixtures.ts';
import { made, type Made } from '../book/make/made.ts';
import type { SheetContent, SheetProperties } from '../book/types.ts';
import type { AnyCommand, Command, Context } from './command.ts';
import { carryOut } from './doing.ts';
import { sheetInView } from './selected.ts';
import { words } from '../words/words.ts';

interface OfSheet {
  readonly sheet: string;
}

/** A new sheet at the end: blank, or with the content of a template and its figures. */
export const add: Command<
  | {
      readonly content?: SheetContent;
      readonly figures?: readonly Figure[];
      /** Those that its formulas call by name. */
      readonly fixtures?: readonly KeptFixture[];
    }
  | undefined
> = {
  id: 'sheet.addContent',
  name: words.commands.addSheet,
  group: 'sheets',
  run(context, args) {
    const { document } = context.book;
    const sheet = args?.content
      ? placeSheet(document, args.content, undefined, undefined, args.figures)
      : addSheet(document, context.means);
    const outcome = carryOut(context, withFixtures(context, sheet, args?.fixtures ?? []));
    if (outcome.ok && sheet.ok) context.session.show(sheet.sheet);
    return outcome;
  },
};

/** With the fixtures that the book does not have yet, in the same gesture. */
function withFixtures(
  { book, means }: Context,
  sheet: Made,
  fixtures: readonly KeptFixture[],
): Made {
  const there = new Set(fixturesOf(book.document).map(({ name }) => keyOf(name)));
  const missing = fixtures.filter(({ name }) => !there.has(keyOf(name)));
  if (!sheet.ok || missing.length === 0) return sheet;
  const shelf = addFixtures(book.document, means, missing);
  if (!shelf.ok) return shelf;
  const { label, steps } = sheet.transaction;
  return made(label, [...shelf.transaction.steps, ...steps]);
}

export const duplicate: Command<Partial<OfSheet> | undefined> = {
  id: 'sheet.duplicate',
  name: words.commands.copySheet,
  group: 'sheets',
  search: ['duplicate'],
  run(context, args) {
    const made = duplicateSheet(context.book.document, context.means, sheetOf(context, args));
    const outcome = carryOut(context, made);
    if (outcome.ok && made.ok) context.session.show(made.sheet);
    return outcome;
  },
};

/** Deletes a sheet; its neighbour comes into view. Undo brings it back with all that referred to it. */
export const remove: Command<Partial<OfSheet> | undefined> = {
  id: 'sheet.delete',
  name: words.commands.deleteSheet,
  group: 'sheets',
  search: ['remove'],
  unavailable: ({ book }) =>
    book.document.sheets.length > 1 ? undefined : words.commands.lastSheet,
  run(context, args) {
    const sheet = sheetOf(context, args);
    const { sheets } = context.book.document;
    const at = sheets.findIndex(({ id }) => id === sheet);
    const title = sheets[at]?.properties.title || sheets[at]?.properties.name;
    const outcome = carryOut(
      context,
      removeSheet(context.book.document, sheet),
      words.commands.deletedSheet(title),
    );
    const next = context.book.document.sheets[Math.max(0, at - 1)];
    if (outcome.ok && next && context.session.state.sheet === sheet) context.session.show(next.id);
    return outcome;
  },
};

/** Among the sheets, and to another phase of the work where one is said. */
export const move: Command<
  OfSheet & { readonly to: number; readonly phase?: SheetProperties['phase'] }
> = {
  id: 'sheet.move',
  name: words.commands.moveSheet,
  group: 'sheets',
  run: (context, { sheet, to, phase }) =>
    carryOut(context, moveSheet(context.book.document, sheet, to, phase)),
};

export const properties: Command<OfSheet & { readonly properties: Partial<SheetProperties> }> = {
  id: 'sheet.properties',
  name: words.commands.describeSheet,
  group: 'sheets',
  search: ['rename'],
  run: (context, args) =>
    carryOut(context, describeSheet(context.book.document, args.sheet, args.properties)),
};

/** How far off a reading may be and still agree, in stops; null for the book's. */
export const tolerance: Command<OfSheet & { readonly tolerance: number | null }> = {
  id: 'sheet.tolerance',
  name: words.commands.sheetTolerance,
  group: 'sheets',
  run: (context, args) =>
    carryOut(
      context,
      describeSheet(
        context.book.document,
        args.sheet,
        { tolerance: args.tolerance },
        words.commands.changeTolerance,
      ),
    ),
};

/** Keeps in view what is above and to the left of the selected cell; a second time lets go. */
export const freeze: Command = {
  id: 'sheet.freeze',
  name: words.commands.freeze,
  group: 'sheets',
  search: ['freeze', 'panes', 'fix'],
  run(context) {
    const { id, properties: now } = sheetInView(context);
    const { row, column } = context.session.state.selection.focus;
    const [rows, columns] =
      now.frozenRows + now.frozenColumns > 0 ? [0, 0] : [Math.min(row, 20), Math.min(column, 20)];
    return carryOut(context, freezeLines(context.book.document, id, rows, columns));
  },
};

const step = (id: string, name: string, keys: string, way: 1 | -1): Command => ({
  id,
  name,
  group: 'view',
  keys: [keys],
  run(context) {
    const { sheets } = context.book.document;
    const at = sheets.findIndex((sheet) => sheet.id === context.session.state.sheet);
    const next = sheets[(at + way + sheets.length) % sheets.length];
    if (next) context.session.show(next.id);
    return { ok: true };
  },
});

function sheetOf(context: Context, args: Partial<OfSheet> | undefined): string {
  return args?.sheet ?? sheetInView(context).id;
}

export const sheetCommands: readonly AnyCommand[] = [
  add,
  duplicate,
  remove,
  move,
  properties,
  tolerance,
  freeze,
  step('sheet.next', words.commands.nextSheet, 'Ctrl+PageDown', 1),
  step('sheet.previous', words.commands.previousSheet, 'Ctrl+PageUp', -1),
];
