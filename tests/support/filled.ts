import { readFileSync } from 'node:fs';
import { createBook } from '../../src/book/book.ts';
import { readBook } from '../../src/book/form/read.ts';
import { readAddress } from '../../src/book/look.ts';
import { enter } from '../../src/book/make/enter.ts';
import { connectEngine } from '../../src/engine/index.ts';
import { fixturesIn } from '../../src/files/photometric/shelf.ts';
import { isError } from '../../functions/values.ts';
import { planMeans } from '../../templates/build.ts';

/** A template's book with its engine, to be read and typed into by addresses of its first sheet. */
export function openFilled(template: string) {
  const file = new URL(`../../templates/${template}/book.json`, import.meta.url);
  const read = readBook(readFileSync(file, 'utf8'));
  if (!read.ok) throw new Error(read.reason);
  const book = createBook(read.document);
  const engine = connectEngine(book, { fixtures: fixturesIn });
  let minted = 0;
  // Ids of its own: those of the plan are taken.
  const means = { ...planMeans(), newId: () => `typed${minted++}` };

  const placeOf = (cell: string) => {
    const at = readAddress(cell);
    const sheet = book.document.sheets[0]?.id;
    if (!at || sheet === undefined) throw new Error(cell);
    return { sheet, ...at };
  };
  const type = (cell: string, text: string) => {
    const made = enter(book.document, means, [{ ...placeOf(cell), text }]);
    if (!made.ok) throw new Error(`${cell}: ${made.reason}`);
    const ran = book.run(made.transaction);
    if (!ran.ok) throw new Error(`${cell}: ${ran.reason}`);
  };
  return {
    valueOf: (cell: string) => engine.valueOf(placeOf(cell)),
    type,
    evaluate: (formula: string) => engine.evaluate(formula).value,
    /** Sentences of the cells that are errors and do not merely wait for a reading or for light. */
    errors: () =>
      book.document.sheets.flatMap((sheet) =>
        sheet.rows.ids.flatMap((_, row) =>
          sheet.columns.ids.flatMap((__, column) => {
            const value = engine.valueOf({ sheet: sheet.id, row, column });
            return isError(value) && !value.waiting && !value.quiet ? [value.message] : [];
          }),
        ),
      ),
  };
}
