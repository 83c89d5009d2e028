import { cellAtSpot, type Spot } from '../book/look.ts';
import type { Document, Id } from '../book/types.ts';

/** A table on a sheet: a row of captions, and rows below it as long as their first cell has words. */
export interface SheetTable {
  /** Columns by caption, in small letters. */
  readonly columns: ReadonlyMap<string, number>;
  /** Positions of the rows below the captions. */
  readonly rows: readonly number[];
}

function wordsAt(document: Document, spot: Spot): string {
  const content = cellAtSpot(document, spot)?.content;
  return content?.kind === 'text' ? content.text.trim() : '';
}

/** The words in column A of a row: what the row is about. */
export function nameOfRow(document: Document, sheet: Id, row: number): string {
  return wordsAt(document, { sheet, row, column: 0 });
}

/** The table whose first caption is `first` and which has a column `Reading`. */
export function findTable(document: Document, sheet: Id, first: string): SheetTable | undefined {
  const { rows, columns } = document.sheet(sheet) ?? {};
  if (!rows || !columns) return undefined;
  for (let row = 0; row < rows.length; row++) {
    if (nameOfRow(document, sheet, row).toLowerCase() !== first) continue;
    const captions = new Map<string, number>();
    for (let column = 0; column < columns.length; column++) {
      const words = wordsAt(document, { sheet, row, column }).toLowerCase();
      if (words !== '' && !captions.has(words)) captions.set(words, column);
    }
    if (captions.has('reading')) {
      return { columns: captions, rows: bodyOf(document, sheet, row + 1, rows.length) };
    }
  }
  return undefined;
}

function bodyOf(document: Document, sheet: Id, from: number, end: number): readonly number[] {
  const body: number[] = [];
  for (let row = from; row < end && nameOfRow(document, sheet, row) !== ''; row++) body.push(row);
  return body;
}

/** The cell to the right of the one that says `label`. */
export function beside(document: Document, sheet: Id, label: string): Spot | undefined {
  const { rows, columns } = document.sheet(sheet) ?? {};
  const wanted = label.toLowerCase();
  for (let row = 0; row < (rows?.length ?? 0); row++) {
    for (let column = 0; column < (columns?.length ?? 0); column++) {
      const spot = { sheet, row, column };
      if (wordsAt(document, spot).toLowerCase() === wanted) return { ...spot, column: column + 1 };
    }
  }
  return undefined;
}
