import { readEntry } from '../../../functions/quantities/entry.ts';
import { createBook } from '../../../src/book/book.ts';
import { newDocument } from '../../../src/book/newdocument.ts';
import type { Spot } from '../../../src/book/look.ts';
import { placeAt, readAddress, typedText } from '../../../src/book/look.ts';
import type { Enterings } from '../../../src/book/make/enter.ts';
import { enter } from '../../../src/book/make/enter.ts';
import type { Region } from '../../../src/book/make/growing.ts';
import type { Made } from '../../../src/book/make/made.ts';
import { addSheet, describeSheet } from '../../../src/book/make/sheets.ts';
import { writingSettings } from '../../../src/book/settings.ts';
import type { Book, Change, Document, Means, Place } from '../../../src/book/types.ts';

/** Ids in one order, so that the same edits make the same book. */
export function countingMeans(): Means {
  let next = 0;
  return {
    newId: () => `i${(next++).toString(36)}`,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
    isFunction: (name) => ['SUM', 'STOPS'].includes(name.toUpperCase()),
  };
}

/** Sheets by name, each with texts by address. */
export type Script = Readonly<Record<string, Readonly<Record<string, string>>>>;

export interface Stage {
  readonly book: Book;
  readonly document: Document;
  readonly means: Means;
  /** Id of a sheet by name. */
  sheet(name: string): string;
  /** `Walk!B4`; without a sheet, the first one. */
  spot(address: string): Spot;
  place(address: string): Place;
  /** `Walk!A1:B4`. */
  region(address: string): Region;
  /** What the entry line shows. */
  text(address: string): string;
  /** What the entry line shows for all cells of a sheet in use, row by row. */
  texts(sheet?: string): string[][];
  type(texts: Readonly<Record<string, string>>): Change | null;
  run(made: Made | Enterings): Change | null;
}

export function stage(script: Script = { Walk: {} }): Stage {
  const means = countingMeans();
  const document = newDocument(means, { title: 'Harbour Hours' });
  const book = createBook(document);
  const self = stageOf(book, means);
  const names = Object.keys(script);
  names.forEach((name, i) => {
    const first = document.sheets[0]?.id ?? '';
    self.run(
      i === 0 ? describeSheet(document, first, { name }) : addSheet(document, means, { name }),
    );
  });
  for (const name of names)
    self.type(
      Object.fromEntries(
        Object.entries(script[name] ?? {}).map(([address, text]) => [`${name}!${address}`, text]),
      ),
    );
  return self;
}

export function stageOf(book: Book, means: Means): Stage {
  const { document } = book;
  const sheet = (name: string) => {
    const id = document.sheetNamed(name)?.id;
    if (id === undefined) throw new Error(`no sheet ${name}`);
    return id;
  };
  const spot = (address: string): Spot => {
    const [name, cell] = address.includes('!') ? address.split('!') : [undefined, address];
    const at = readAddress(cell ?? '');
    if (!at) throw new Error(`no address ${address}`);
    return { sheet: name === undefined ? (document.sheets[0]?.id ?? '') : sheet(name), ...at };
  };
  const run = (made: Made | Enterings) => {
    if (!made.ok) throw new Error(made.reason);
    const result = book.run(made.transaction);
    if (!result.ok) throw new Error(result.reason);
    return result.change;
  };
  const place = (address: string) => {
    const found = placeAt(document, spot(address));
    if (!found) throw new Error(`nothing at ${address} yet`);
    return found;
  };
  return {
    book,
    document,
    means,
    sheet,
    spot,
    place,
    run,
    region(address) {
      const [first = '', last = first.replace(/^.*!/, '')] = address.split(':');
      const from = spot(first);
      const to = readAddress(last) ?? from;
      return {
        sheet: from.sheet,
        top: from.row,
        left: from.column,
        height: to.row - from.row + 1,
        width: to.column - from.column + 1,
      };
    },
    text(address) {
      const found = placeAt(document, spot(address));
      return found ? typedText(document, found) : '';
    },
    texts(name) {
      const found = name === undefined ? document.sheets[0] : document.sheetNamed(name);
      if (!found) return [];
      return found.rows.ids.map((row) =>
        found.columns.ids.map((column) => typedText(document, { sheet: found.id, row, column })),
      );
    },
    type(texts) {
      const entries = Object.entries(texts).map(([address, text]) => ({ ...spot(address), text }));
      return run(enter(document, means, entries));
    },
  };
}
