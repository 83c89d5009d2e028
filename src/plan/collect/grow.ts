import { copyCells } from '../../book/make/copy.ts';
import { enter, type Entry } from '../../book/make/enter.ts';
import { insertLines } from '../../book/make/lines.ts';
import type { Made } from '../../book/make/made.ts';
import type { Document, Means } from '../../book/types.ts';
import type { Rows } from './rows.ts';

/** How many rows a table needs beside its free ones. */
export const lacking = ({ free }: Rows, wanted: number): number =>
  Math.max(0, wanted - free.length);

/** The free rows of a table once so many more stand before its last. */
export function grown({ free, last }: Rows, count: number): readonly number[] {
  if (count === 0) return free;
  const before = free.filter((row) => row < last);
  const added = Array.from({ length: count }, (_, index) => last + index);
  return [...before, ...added, ...free.filter((row) => row >= last).map((row) => row + count)];
}

/** More rows before the last of a table, like it and with nothing typed in them. */
export function grow(
  { last }: Rows,
  sheet: string,
  means: Means,
  count: number,
): readonly ((document: Document) => Made)[] {
  if (count === 0) return [];
  const like = (document: Document, row: number, height: number) => {
    const width = document.sheet(sheet)?.columns.length ?? 1;
    return { sheet, top: row, left: 0, height, width };
  };
  return [
    (document) => insertLines(document, means, sheet, 'rows', last, count),
    (document) =>
      copyCells(document, means, like(document, last + count, 1), like(document, last, count)),
    (document) => {
      const found = document.sheet(sheet);
      const blanks = Array.from({ length: count }, (_, index) => last + index).flatMap((row) =>
        (found?.columns.ids ?? []).flatMap((column, at): Entry[] => {
          const cell = found?.cell(found.rows.idAt(row) ?? '', column);
          return cell?.role ? [{ sheet, row, column: at, text: '' }] : [];
        }),
      );
      return enter(document, means, blanks);
    },
  ];
}
