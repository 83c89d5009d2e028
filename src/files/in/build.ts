import { quantityNames, type QuantityName } from '../../../functions/quantities/names.ts';
import { units } from '../../../functions/quantities/units.ts';
import { emptySheet } from '../../book/newdocument.ts';
import type {
  Cell,
  Document,
  LineProperties,
  Means,
  SheetContent,
  Step,
  Transaction,
} from '../../book/types.ts';
import { bind } from '../../formula/bind.ts';
import { faultOfName, faultOfSheetName, maxSheetNameLength } from '../../formula/naming.ts';
import { readFormula } from '../../formula/read.ts';
import type { Formula } from '../../formula/types.ts';
import type { PlainBook, PlainCell, PlainSheet } from '../plain/types.ts';
import { cellIn, type Measured } from './cell.ts';
import type { Guessed } from './guess.ts';
import { ImportLayout, type SheetLines } from './layout.ts';
import { words } from '../../words/words.ts';

/** What was chosen for a guess: its own meaning, another quantity in its base unit, or none. */
export type Choice = 'guess' | 'none' | QuantityName;

export interface Building {
  readonly book: PlainBook;
  readonly guessed: Guessed;
  readonly choices: ReadonlyMap<string, Choice>;
}

/**
 * The sheets and names of a file as one transaction on a book. Names that are taken already get
 * another, in the formulas too.
 */
export function taking(
  document: Document,
  means: Means,
  { book, guessed, choices }: Building,
  label: string,
): Transaction {
  const names = newNames(document, means, book);
  const lines = new Map<string, SheetLines>();
  const taken = new Set(document.sheets.map(({ properties }) => properties.name.toLowerCase()));
  for (const sheet of book.sheets) {
    const name = freeName(sheet.name, taken);
    taken.add(name.toLowerCase());
    lines.set(sheet.name.toLowerCase(), { id: means.newId(), name, rows: [], columns: [] });
  }
  const layout = new ImportLayout(lines, means);
  const formulaOf = (text: string, own: string): Formula | undefined => {
    const read = readFormula(text, Infinity);
    if ('reason' in read) return undefined;
    const references = read.references.map((reference) =>
      reference.kind === 'name'
        ? { ...reference, name: names.get(reference.name.toLowerCase()) ?? reference.name }
        : reference,
    );
    const formula = bind({ ...read, references }, own, layout);
    return 'reason' in formula ? undefined : formula;
  };
  const meaning = meaningsOf(guessed, choices);
  const contents = book.sheets.map((sheet) =>
    contentOf(sheet, lines.get(sheet.name.toLowerCase()), layout, (cell, id) =>
      cellIn(
        cell,
        meaning(sheet, cell),
        cell.formula === undefined ? undefined : formulaOf(cell.formula, id),
        { means, settings: document.settings, locks: sheet.protected === true },
      ),
    ),
  );
  const [first] = contents;
  const named = book.names.flatMap(({ name, formula }): Step[] => {
    const meant = first && formulaOf(formula, first.id);
    const spelled = names.get(name.toLowerCase());
    if (!meant || spelled === undefined) return [];
    return [{ kind: 'defineName', name: { id: means.newId(), name: spelled, formula: meant } }];
  });
  const at = document.sheets.length;
  const sheets = contents.map((content, index): Step => ({
    kind: 'addSheet',
    // Formulas of later sheets may have brought lines into use.
    content: { ...content, ...layout.linesOf(content.id) },
    at: at + index,
  }));
  return { label, steps: [...sheets, ...named] };
}

function meaningsOf({ guesses, of }: Guessed, choices: ReadonlyMap<string, Choice>) {
  const byId = new Map(guesses.map((guess) => [guess.id, guess]));
  return ({ name }: PlainSheet, { row, column }: PlainCell): Measured | undefined => {
    const guess = byId.get(of.get(`${name} ${String(row)} ${String(column)}`) ?? '');
    if (!guess) return undefined;
    const choice = choices.get(guess.id) ?? (guess.doubt === undefined ? 'guess' : 'none');
    if (choice === 'none') return undefined;
    if (choice === 'guess') return guess;
    const quantity = quantityNames.find((name) => name === choice);
    return quantity && { quantity, unit: units[quantity].base };
  };
}

function contentOf(
  sheet: PlainSheet,
  lines: SheetLines | undefined,
  layout: ImportLayout,
  make: (cell: PlainCell, sheet: string) => Cell,
): SheetContent {
  const { id = '', name = sheet.name } = lines ?? {};
  const empty = emptySheet(id, {
    name,
    frozenRows: sheet.frozenRows,
    frozenColumns: sheet.frozenColumns,
  });
  const cells = sheet.cells.flatMap((cell) => {
    const row = layout.lineAt(id, 'rows', cell.row);
    const column = layout.lineAt(id, 'columns', cell.column);
    return row === undefined || column === undefined ? [] : [{ row, column, cell: make(cell, id) }];
  });
  const columnProperties = [...sheet.widths].flatMap(
    ([index, size]): { id: string; properties: LineProperties }[] => {
      const column = layout.lineAt(id, 'columns', index);
      return column === undefined ? [] : [{ id: column, properties: { size } }];
    },
  );
  return { ...empty, cells, columnProperties };
}

/** A name that a sheet may have here, with a number behind it where it is taken. */
function freeName(wanted: string, taken: ReadonlySet<string>): string {
  const cleaned = wanted.replace(/[[\]:*?/\\\p{Cc}]/gu, ' ').replace(/^['\s]+|['\s]+$/g, '');
  const base = cleaned.slice(0, maxSheetNameLength).trim();
  const stem = faultOfSheetName(base) ? words.files.sheet : base;
  if (!taken.has(stem.toLowerCase())) return stem;
  for (let number = 2; ; number += 1) {
    const tail = ` ${String(number)}`;
    const name = stem.slice(0, maxSheetNameLength - tail.length).trimEnd() + tail;
    if (!taken.has(name.toLowerCase())) return name;
  }
}

/** What each name of the file is called in the book, by the name in small letters. */
function newNames(document: Document, means: Means, { names }: PlainBook): Map<string, string> {
  const given = new Map<string, string>();
  const taken = new Set(document.names.map(({ name }) => name.toLowerCase()));
  for (const { name } of names) {
    const fault = faultOfName(name, (text) => means.isFunction(text));
    const stem = fault ? fault.offer : name;
    if (stem === undefined) continue;
    let free = stem;
    for (let number = 2; taken.has(free.toLowerCase()); number += 1)
      free = `${stem}_${String(number)}`;
    taken.add(free.toLowerCase());
    given.set(name.toLowerCase(), free);
  }
  return given;
}
