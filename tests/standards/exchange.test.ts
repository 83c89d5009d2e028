import { parse } from 'papaparse';
import { describe, expect, it } from 'vitest';
import { near } from '../../functions/near.ts';
import { isFunction } from '../../src/engine/index.ts';
import { newBookFrom } from '../../src/files/in/newBook.ts';
import { readForeign } from '../../src/files/in/read.ts';
import type { PlainBook } from '../../src/files/plain/types.ts';
import { odsOf } from '../../src/files/ods/write.ts';
import { xlsxOf } from '../../src/files/xlsx/write.ts';
import { calculated, everyBook, misled, plainOf } from '../support/exchange.ts';
import {
  libreOffice,
  recalculatedSheets,
  savedAs,
  withoutLibreOffice,
} from '../support/libreoffice.ts';
import { countingMeans } from '../unit/engine/support/openBook.ts';

const share = 1e-9;
const books = everyBook();

const forms: Readonly<Record<string, (book: PlainBook) => Promise<Uint8Array>>> = {
  xlsx: xlsxOf,
  ods: async (book) => odsOf(book),
};

interface Counts {
  compared: number;
  formulas: number;
  waiting: number;
}

/** Holds each formula of a book against what LibreOffice made of it. */
function compare(
  book: PlainBook,
  given: ReadonlyMap<string, string>,
): Counts & { wrong: string[] } {
  const found = { compared: 0, formulas: 0, waiting: 0, wrong: [] as string[] };
  for (const { name, hidden, cells } of book.sheets) {
    if (hidden) continue;
    const rows = parse<string[]>(given.get(name) ?? '').data;
    for (const { row, column, value, formula, waits } of cells) {
      if (formula === undefined) continue;
      found.formulas += 1;
      const text = rows[row]?.[column] ?? '';
      const told = `${name} ${String(row + 1)}/${String(column + 1)}: ${text} for ${JSON.stringify(value)} ${formula}`;
      if (waits) {
        found.waiting += 1;
        if (text !== '#N/A') found.wrong.push(told);
      } else if (typeof value === 'number') {
        found.compared += 1;
        if (text === '' || !near(Number(text), value, share)) found.wrong.push(told);
      }
    }
  }
  return found;
}

describe(`books opened and worked out by LibreOffice agree to ${share} · max(1, |value|)`, () => {
  if (withoutLibreOffice !== undefined) {
    it.skip(withoutLibreOffice, () => undefined);
    return;
  }
  it('LibreOffice is there', () => {
    expect(libreOffice, 'REQUIRE names libreoffice: soffice must be on the path').toBeDefined();
  });
  for (const [ending, write] of Object.entries(forms)) {
    it(`every template and sample book as .${ending}, with wrong values stored`, async () => {
      const plain = books.map((book) => ({ name: book.name, plain: plainOf(book) }));
      const files = await Promise.all(
        plain.map(async ({ name, plain }) => ({
          name: `${name}.${ending}`,
          content: await write(misled(plain)),
        })),
      );
      const given = recalculatedSheets(files);
      for (const { name, plain: book } of plain) {
        const { compared, formulas, waiting, wrong } = compare(
          book,
          given.get(`${name}.${ending}`) ?? new Map(),
        );
        console.log(
          `${name}.${ending}: ${String(compared)} numbers and ${String(waiting)} waiting cells compared, of ${String(formulas)} formulas`,
        );
        expect(wrong).toEqual([]);
        expect(compared + waiting, name).toBeGreaterThan(0);
      }
    });
  }
  for (const ending of ['xlsx', 'ods']) {
    it(`what LibreOffice writes as .${ending} comes to the same here`, async () => {
      const plain = books.map((book) => ({ name: book.name, plain: plainOf(book) }));
      const files = await Promise.all(
        plain.map(async ({ name, plain }) => ({
          name: `${name}.${ending === 'xlsx' ? 'ods' : 'xlsx'}`,
          content: await (ending === 'xlsx' ? odsOf(plain) : xlsxOf(plain)),
        })),
      );
      const written = savedAs(ending, files);
      for (const { name, plain: book } of plain) {
        const read = readForeign(written.get(`${name}.${ending}`) ?? new Uint8Array(), name, {
          isFunction,
        });
        if (!read.ok) throw new Error(read.reason);
        expect(read.imported.leftOut, name).toEqual([]);
        const made = newBookFrom(read.imported, countingMeans());
        if (!made.ok) throw new Error(made.reason);
        const back = calculated(name, made.document);
        let compared = 0;
        const wrong: string[] = [];
        for (const sheet of book.sheets) {
          const id = back.document.sheetNamed(sheet.name)?.id ?? '';
          for (const { row, column, value, formula } of sheet.cells) {
            if (formula === undefined || typeof value !== 'number') continue;
            compared += 1;
            const given = back.engine.valueOf({ sheet: id, row, column });
            if (typeof given !== 'number' || !near(given, value, share))
              wrong.push(
                `${sheet.name} ${String(row + 1)}/${String(column + 1)}: ${JSON.stringify(given)} for ${String(value)} ${formula}`,
              );
          }
        }
        console.log(`${name}.${ending} from outside: ${String(compared)} numbers compared`);
        expect(wrong).toEqual([]);
        expect(compared, name).toBeGreaterThan(0);
      }
    });
  }
});
