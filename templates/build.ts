import { readEntry } from '../functions/quantities/index.ts';
import { createBook } from '../src/book/book.ts';
import { readAddress } from '../src/book/look.ts';
import { addFigure } from '../src/book/make/figures.ts';
import { enter } from '../src/book/make/enter.ts';
import { sizeLines } from '../src/book/make/lines.ts';
import type { Made } from '../src/book/make/made.ts';
import { describeCells, setQuantity, setTarget } from '../src/book/make/properties.ts';
import { addSheet } from '../src/book/make/sheets.ts';
import { newDocument } from '../src/book/newdocument.ts';
import { writingSettings } from '../src/book/settings.ts';
import type { Book, Id, Means } from '../src/book/types.ts';
import type { PlannedBook, PlannedCell, PlannedSheet } from './plan.ts';

/** Ids that come out the same each time, so that the same plan is the same file. */
export function planMeans(): Means {
  let count = 0;
  return {
    newId: () => `t${(count++).toString(36)}`,
    isFunction: () => false,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
  };
}

/** The book that a plan describes. A cell that cannot be read as planned stops the building. */
export function buildBook(plan: PlannedBook, means: Means = planMeans()): Book {
  const [first, ...others] = plan.sheets;
  if (!first) throw new Error('A planned book has at least one sheet.');
  const properties = propertiesOf(first);
  const book = createBook(newDocument(means, { title: plan.title, sheet: properties }));
  fillSheet(book, means, book.document.sheets[0]?.id ?? '', first);
  for (const sheet of others) {
    const made = addSheet(book.document, means, propertiesOf(sheet));
    run(book, made);
    if (made.ok) fillSheet(book, means, made.sheet, sheet);
  }
  return book;
}

const propertiesOf = ({ name, title, purpose, phase, template, ...rest }: PlannedSheet) => ({
  name,
  title,
  purpose,
  phase,
  template,
  tolerance: rest.tolerance ?? null,
  frozenRows: rest.frozenRows ?? 0,
  frozenColumns: rest.frozenColumns ?? 0,
});

/** Runs what was made; a plan that cannot be carried out is a mistake of its author. */
export function run(book: Book, made: Made): void {
  if (!made.ok) throw new Error(made.reason);
  const ran = book.run(made.transaction);
  if (!ran.ok) throw new Error(ran.reason);
}

function fillSheet(book: Book, means: Means, sheet: Id, plan: PlannedSheet): void {
  for (const [column, width] of plan.widths.entries()) {
    run(book, sizeLines(book.document, means, sheet, 'columns', [column], width));
  }
  // What cells measure comes first: it decides how the typed texts are read.
  for (const [address, cell] of Object.entries(plan.cells))
    describe(book, means, sheet, address, cell);
  for (const [address, { typed }] of Object.entries(plan.cells)) {
    if (typed === undefined || typed === '') continue;
    const entered = enter(book.document, means, [{ ...spotAt(sheet, address), text: typed }]);
    if (!entered.ok) throw new Error(`${address}: ${entered.reason}`);
    run(book, entered);
  }
  for (const [address, { target }] of Object.entries(plan.cells)) {
    if (target !== undefined)
      run(book, setTarget(book.document, means, spotAt(sheet, address), target));
  }
  for (const figure of plan.figures ?? [])
    run(book, addFigure(book.document, means, sheet, figure));
}

function spotAt(sheet: Id, address: string) {
  const at = readAddress(address);
  if (!at) throw new Error(`${address} is no address.`);
  return { sheet, ...at };
}

function describe(book: Book, means: Means, sheet: Id, address: string, cell: PlannedCell): void {
  const { row, column } = spotAt(sheet, address);
  const region = { sheet, top: row, left: column, height: 1, width: 1 };
  const { quantity, role, decimals, bold, align, note } = cell;
  if (quantity) run(book, setQuantity(book.document, means, [region], quantity));
  const format = {
    ...(decimals !== undefined && { decimals }),
    ...(bold !== undefined && { bold }),
    ...(align !== undefined && { align }),
  };
  run(
    book,
    describeCells(book.document, means, [region], {
      ...(role && { role }),
      ...(note !== undefined && { note }),
      ...(Object.keys(format).length > 0 && { format }),
    }),
  );
}
