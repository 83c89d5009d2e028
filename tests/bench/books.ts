import { readEntry } from '../../functions/quantities/entry.ts';
import { createBook } from '../../src/book/book.ts';
import { enter } from '../../src/book/make/enter.ts';
import { newDocument } from '../../src/book/newdocument.ts';
import { writingSettings } from '../../src/book/settings.ts';
import type { Book, Means, Refusal, Transaction } from '../../src/book/types.ts';

/** Ids in the order in which they are asked for: each run builds the same book. */
export function countingMeans(): Means {
  let count = 0;
  return {
    newId: () => `i${String(++count)}`,
    readEntry: (text, quantity, settings) => readEntry(text, quantity, writingSettings(settings)),
    isFunction: () => false,
  };
}

type Made = { readonly ok: true; readonly transaction: Transaction } | Refusal;

/** Runs what was made, or throws why it cannot be. */
export function must(book: Book, made: Made): void {
  if (!made.ok) throw new Error(made.reason);
  const ran = book.run(made.transaction);
  if (!ran.ok) throw new Error(ran.reason);
}

/** A book of one sheet with these texts in it, row by row from A1. */
export function bookOf(
  means: Means,
  rows: number,
  textsOf: (row: number) => readonly string[],
): Book {
  const book = createBook(newDocument(means));
  const sheet = firstSheet(book);
  const entries = Array.from({ length: rows }, (_, row) =>
    textsOf(row).map((text, column) => ({ sheet, row, column, text })),
  ).flat();
  must(book, enter(book.document, means, entries));
  return book;
}

export function firstSheet({ document }: Book): string {
  return document.sheets[0]?.id ?? '';
}

/** Milliseconds of the processor since then: other work on the machine does not count. */
export function processorTime(since: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(since);
  return (user + system) / 1000;
}

export function median(times: readonly number[]): number {
  return times.toSorted((a, b) => a - b)[Math.floor(times.length / 2)] ?? Number.NaN;
}
