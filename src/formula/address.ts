/** The largest address that reads as one: three letters. Sheets end before (see the book's limits). */
const addressPattern = /^(\$?)([A-Za-z]{1,3})(\$?)(\d+)$/;
const columnPattern = /^(\$?)([A-Za-z]{1,3})$/;
const rowPattern = /^(\$?)(\d+)$/;

/** A row or a column as written: its index from 0, and whether a `$` stood before it. */
export interface WrittenEnd {
  readonly index: number;
  readonly fixed: boolean;
}

export interface WrittenCorner {
  readonly row: WrittenEnd;
  readonly column: WrittenEnd;
}

/** `0` → `A`, `26` → `AA`. */
export function columnLetters(index: number): string {
  const last = String.fromCharCode(65 + (index % 26));
  return index < 26 ? last : columnLetters(Math.floor(index / 26) - 1) + last;
}

/** `A` → `0`, `aa` → `26`. */
export function columnIndex(letters: string): number {
  let index = 0;
  for (const letter of letters.toUpperCase()) index = index * 26 + letter.charCodeAt(0) - 64;
  return index - 1;
}

/** Reads `B4` or `$B$4`; `undefined` for anything else. `A0` and `A01` read as row -1: beyond any sheet. */
export function readCorner(text: string): WrittenCorner | undefined {
  const match = addressPattern.exec(text);
  if (!match) return undefined;
  const [, fixedColumn, letters = '', fixedRow, digits = ''] = match;
  return {
    row: { index: rowIndex(digits), fixed: fixedRow === '$' },
    column: { index: columnIndex(letters), fixed: fixedColumn === '$' },
  };
}

/** Reads `B` or `$B`. */
export function readColumn(text: string): WrittenEnd | undefined {
  const match = columnPattern.exec(text);
  return match ? { index: columnIndex(match[2] ?? ''), fixed: match[1] === '$' } : undefined;
}

/** Reads `4` or `$4`. */
export function readRow(text: string): WrittenEnd | undefined {
  const match = rowPattern.exec(text);
  return match ? { index: rowIndex(match[2] ?? ''), fixed: match[1] === '$' } : undefined;
}

/** A row number with a leading zero is no row. */
function rowIndex(digits: string): number {
  return digits.startsWith('0') ? -1 : Number(digits) - 1;
}

export function writeRow({ index, fixed }: WrittenEnd): string {
  return (fixed ? '$' : '') + String(index + 1);
}

export function writeColumn({ index, fixed }: WrittenEnd): string {
  return (fixed ? '$' : '') + columnLetters(index);
}

/** `B4`, `$B$4`. */
export function writeCorner({ row, column }: WrittenCorner): string {
  return writeColumn(column) + writeRow(row);
}
