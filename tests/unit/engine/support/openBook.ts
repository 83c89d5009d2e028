import { readEntry } from '../../../../functions/quantities/entry.ts';
import { createBook } from '../../../../src/book/book.ts';
import { readAddress } from '../../../../src/book/look.ts';
import { enter } from '../../../../src/book/make/enter.ts';
import { addSheet } from '../../../../src/book/make/sheets.ts';
import { newDocument } from '../../../../src/book/newdocument.ts';
import { writingSettings } from '../../../../src/book/settings.ts';
import type { Means, Refusal, Settings, Transaction } from '../../../../src/book/types.ts';
import { connectEngine, isFunction } from '../../../../src/engine/index.ts';
import type { CellValue, EngineOptions } from '../../../../src/engine/types.ts';

/** Ids in the order in which they are asked for. */
export function countingMeans(): Means {
  let count = 0;
  return {
    newId: () => `id${String(++count)}`,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
    isFunction,
  };
}

type Made = { readonly ok: true; readonly transaction: Transaction } | Refusal;

/** A calculated book with these texts typed into its sheets, row by row from A1. */
export function openBook(
  sheets: Readonly<Record<string, readonly (readonly string[])[]>>,
  { settings, ...options }: EngineOptions & { settings?: Partial<Settings> } = {},
) {
  const means = countingMeans();
  const [first = 'Sheet 1', ...others] = Object.keys(sheets);
  const document = newDocument(means, { sheet: { name: first }, ...(settings && { settings }) });
  const book = createBook(document);
  for (const name of others) must(addSheet(document, means, { name }));
  const texts = Object.entries(sheets).flatMap(([name, rows]) =>
    rows.flatMap((row, r) =>
      row.map((text, c) => ({ sheet: idOf(name), row: r, column: c, text })),
    ),
  );
  must(
    enter(
      document,
      means,
      texts.filter(({ text }) => text !== ''),
    ),
  );
  const engine = connectEngine(book, options);

  function idOf(name: string): string {
    const sheet = document.sheetNamed(name);
    if (!sheet) throw new Error(`There is no sheet ${name}.`);
    return sheet.id;
  }

  /** Runs what was made, or throws why it cannot be. */
  function must(made: Made): void {
    if (!made.ok) throw new Error(made.reason);
    const ran = book.run(made.transaction);
    if (!ran.ok) throw new Error(ran.reason);
  }

  function spot(address: string, sheet = first) {
    const at = readAddress(address);
    if (!at) throw new Error(`${address} is no address.`);
    return { sheet: idOf(sheet), ...at };
  }

  return {
    book,
    document,
    means,
    engine,
    must,
    spot,
    idOf,
    type(address: string, text: string, sheet?: string) {
      must(enter(document, means, [{ ...spot(address, sheet), text }]));
    },
    value: (address: string, sheet?: string): CellValue => engine.valueOf(spot(address, sheet)),
    quantity: (address: string, sheet?: string) => engine.quantityOf(spot(address, sheet)),
  };
}
