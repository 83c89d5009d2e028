import type { Cell, Document, Id, Sheet } from '../book/types.ts';

/** How far up a heading is looked for. */
const reach = 300;
/** Columns from the left in which a row's own words may stand. */
const first = 8;

function cellAt(sheet: Sheet, row: Id | undefined, column: number): Cell | undefined {
  const id = sheet.columns.idAt(column);
  return row !== undefined && id !== undefined ? sheet.cell(row, id) : undefined;
}

const textOf = (cell: Cell | undefined): string =>
  cell?.content.kind === 'text' ? cell.content.text.trim() : '';

const textAt = (sheet: Sheet, row: Id | undefined, column: number): string =>
  textOf(cellAt(sheet, row, column));

/** Words that are only words: no reading, no choice, nothing measured. */
function labelAt(sheet: Sheet, row: Id | undefined, column: number): string {
  const cell = cellAt(sheet, row, column);
  return cell?.role || cell?.quantity ? '' : textOf(cell);
}

/** Room for words that nobody has written yet. */
const isToBeNamed = ({ content, role, quantity }: Cell): boolean =>
  content.kind === 'blank' && role !== undefined && quantity === 'text';

/** What a cell is about: the label right beside it, else the first words in its row, if it has a name yet. */
export function rowCaption(document: Document, id: Id, row: number, column: number): string {
  const sheet = document.sheet(id);
  const rowId = sheet?.rows.idAt(row);
  if (!sheet) return '';
  const beside = column > 0 ? labelAt(sheet, rowId, column - 1) : '';
  if (beside !== '') return beside;
  for (let at = 0; at < Math.min(column, first); at += 1) {
    const cell = cellAt(sheet, rowId, at);
    if (cell && isToBeNamed(cell)) return '';
    if (textOf(cell) !== '') return textOf(cell);
  }
  return '';
}

/** A row of headings: words over this column, and words in most of its written cells. */
function isHeading(sheet: Sheet, row: Id, column: number): boolean {
  if (textAt(sheet, row, column) === '') return false;
  const written = sheet.columns.ids.flatMap((id) => sheet.cell(row, id)?.content ?? []);
  const filled = written.filter(({ kind }) => kind !== 'blank');
  const words = filled.filter(({ kind }) => kind === 'text');
  return words.length >= 2 && words.length === filled.length;
}

/** What a column is about: the words over it in the nearest row of headings. */
export function columnCaption(document: Document, id: Id, row: number, column: number): string {
  const sheet = document.sheet(id);
  if (!sheet) return '';
  for (let at = row - 1; at >= Math.max(0, row - reach); at -= 1) {
    const rowId = sheet.rows.idAt(at);
    if (rowId !== undefined && isHeading(sheet, rowId, column)) return textAt(sheet, rowId, column);
  }
  return '';
}

/** "From key, Fill side of face". */
export function caption(document: Document, id: Id, row: number, column: number): string {
  return [columnCaption(document, id, row, column), rowCaption(document, id, row, column)]
    .filter(Boolean)
    .join(', ');
}
