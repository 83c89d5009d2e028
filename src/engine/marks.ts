import { addressAt, spotOf } from '../book/look.ts';
import { writeSheetPrefix } from '../formula/sheetprefix.ts';
import type { Document, Id, Place } from '../book/types.ts';
import { words } from '../words/words.ts';

/**
 * An error keeps its sentence while rows move and sheets get other names, so a cell stands in it by
 * its ids and is named only when someone reads the sentence.
 */
const begin = '\u0001';
const end = '\u0002';
const marks = new RegExp(`${begin}([^ ]+) ([^ ]+) ([^${end}]+)${end}`, 'g');

export function cellMark({ sheet, row, column }: Place): string {
  return `${begin}${sheet} ${row} ${column}${end}`;
}

/** The sentence with its cells named as seen from a sheet: `B2` on the own one, else `Walk!B2`. */
export function readMarks(document: Document, text: string, from: Id | undefined): string {
  if (!text.includes(begin)) return text;
  return text.replace(marks, (_, sheet: Id, row: Id, column: Id) => {
    const spot = spotOf(document, { sheet, row, column });
    return spot ? addressFrom(document, spot, from) : words.engine.deletedCell;
  });
}

/** `B2`, or with the name of its sheet where that is another one. */
export function addressFrom(
  document: Document,
  spot: { readonly sheet: Id; readonly row: number; readonly column: number },
  from: Id | undefined,
): string {
  const address = addressAt(spot);
  if (spot.sheet === from) return address;
  const name = document.sheet(spot.sheet)?.properties.name ?? '';
  return writeSheetPrefix(name) + address;
}
