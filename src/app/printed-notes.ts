import type { Id } from '../book/types.ts';
import type { Desk } from './desk.ts';

/** One note with all cells that it is on. */
export interface Noted {
  readonly text: string;
  readonly cells: { readonly row: number; readonly column: number }[];
}

/** What people wrote on cells and what the check has to say of them, in the order of reading. */
export function notesOn(desk: Desk, sheet: Id, rows: number, columns: number): readonly Noted[] {
  const found = desk.book.document.sheet(sheet);
  const notes = new Map<string, Noted>();
  for (let row = 0; row < rows; row += 1)
    for (let column = 0; column < columns; column += 1) {
      const [rowId, columnId] = [found?.rows.idAt(row), found?.columns.idAt(column)];
      const cell =
        rowId !== undefined && columnId !== undefined ? found?.cell(rowId, columnId) : undefined;
      const said = [cell?.note ?? '', ...desk.remarksAt({ sheet, row, column })];
      const text = said.filter((one) => one !== '').join(' ');
      if (text === '') continue;
      const noted = notes.get(text) ?? { text, cells: [] };
      noted.cells.push({ row, column });
      notes.set(text, noted);
    }
  return [...notes.values()];
}

/** The lines of a sheet that stand on one run of pages. */
export interface Run {
  readonly rows: readonly number[];
  readonly columns: readonly number[];
}

/** The number of its note goes behind a cell's words, or before a number. */
export function numberNotes(
  part: HTMLElement,
  { rows, columns }: Run,
  notes: readonly Noted[],
): void {
  const lines = part.querySelectorAll('tbody tr');
  notes.forEach(({ cells }, index) => {
    for (const { row, column } of cells) {
      const cell = lines[rows.indexOf(row)]?.querySelectorAll('td')[columns.indexOf(column)];
      if (!cell) continue;
      const mark = document.createElement('sup');
      mark.className = 'note-number';
      mark.textContent = String(index + 1);
      (cell.classList.contains('left') ? (cell.querySelector('.words') ?? cell) : cell).append(
        mark,
      );
    }
  });
}
