import { createBook } from '../book/book.ts';
import { cellAtSpot, placeAt, type Spot } from '../book/look.ts';
import type { Content, Document } from '../book/types.ts';
import { connectEngine } from '../engine/index.ts';
import type { CellValue, EngineOptions } from '../engine/types.ts';
import { words } from '../words/words.ts';

/** A book to try things in: what is put into its cells stays in it. */
export interface Trial {
  /** Puts a value where one is typed now. A reason where there is none to be replaced. */
  put(spot: Spot, content: Content): string | undefined;
  valueOf(spot: Spot): CellValue;
}

/** The document is taken over: read one for it, as from a file. */
export function trialOf(document: Document, options: EngineOptions = {}): Trial {
  const book = createBook(document);
  const engine = connectEngine(book, options);
  return {
    put(spot, content) {
      const place = placeAt(book.document, spot);
      const cell = cellAtSpot(book.document, spot);
      if (!place || !cell) return words.choose.nothingThere;
      const { typed: _typed, under: _under, ...kept } = cell;
      const { sheet, ...line } = place;
      const cells = [{ ...line, cell: { ...kept, content } }];
      const ran = book.run({ label: '', steps: [{ kind: 'setCells', sheet, cells }] });
      return ran.ok ? undefined : ran.reason;
    },
    valueOf: (spot) => engine.valueOf(spot),
  };
}
