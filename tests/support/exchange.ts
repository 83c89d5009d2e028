import { readdirSync, readFileSync } from 'node:fs';
import { createBook } from '../../src/book/book.ts';
import { readBook } from '../../src/book/form/read.ts';
import type { Document } from '../../src/book/types.ts';
import { connectEngine, valuesFor, type Engine } from '../../src/engine/index.ts';
import { plainBook } from '../../src/files/out/plain.ts';
import type { Values } from '../../src/files/out/values.ts';
import type { PlainBook, PlainCell } from '../../src/files/plain/types.ts';

const folder = new URL('../../templates/', import.meta.url);

export interface Calculated {
  readonly name: string;
  readonly document: Document;
  readonly engine: Engine;
}

/** A book with what it comes to. */
export function calculated(name: string, document: Document): Calculated {
  return { name, document, engine: connectEngine(createBook(document)) };
}

/** Every template and sample book. */
export function everyBook(): readonly Calculated[] {
  return readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map(({ name }) => {
      const read = readBook(readFileSync(new URL(`${name}/book.json`, folder), 'utf8'));
      if (!read.ok) throw new Error(read.reason);
      return calculated(name, read.document);
    });
}

export const valuesOf = ({ document, engine }: Calculated): Values => valuesFor(document, engine);

export const plainOf = (book: Calculated, formulas: 'live' | 'values' = 'live'): PlainBook =>
  plainBook(book.document, valuesOf(book), { formulas });

/**
 * Values stored with formulas are made wrong: a program that only shows them is found out. Shares
 * and times of day are left without their look, with which CSV would cut their digits.
 */
export function misled(book: PlainBook): PlainBook {
  const wrong = { number: 12_345.5, string: 'wrong', boolean: 'wrong', object: -1 };
  return {
    ...book,
    sheets: book.sheets.map((sheet) => ({
      ...sheet,
      cells: sheet.cells.map((cell) =>
        // What is typed too: a result without a look takes that of the cells it reads.
        cell.formula === undefined
          ? bare(cell)
          : { ...bare(cell), value: wrong[typeof cell.value as keyof typeof wrong] },
      ),
    })),
  };
}

function bare({ look, ...cell }: PlainCell): PlainCell {
  return look && !look.percent && !look.moment ? { ...cell, look } : cell;
}
