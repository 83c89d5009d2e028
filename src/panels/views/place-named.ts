import { readAddress } from '../../book/look.ts';
import type { Document } from '../../book/types.ts';
import { splitSheetPrefix } from '../../formula/sheetprefix.ts';
import { firstExtent, targetOf } from './extents.ts';
import type { Target } from '../shown.ts';
import { words } from '../../words/words.ts';

/** What was written in the name box as a place in the book; a sentence if it names none. */
export function placeNamed(
  document: Document,
  shown: string,
  written: string,
): Target | { readonly reason: string } {
  const text = written.trim();
  const named = document.named(text);
  const extent = named && firstExtent(document, named.formula);
  if (extent) return targetOf(extent);
  const sheet = sheetCalled(document, text);
  if (sheet !== undefined) return { sheet, from: { row: 0, column: 0 } };
  const { sheet: prefix, rest } = splitSheetPrefix(text);
  const on = prefix === undefined ? shown : sheetCalled(document, prefix);
  const [from, to] = rest.split(':').map((part) => readAddress(part.trim().toUpperCase()));
  if (on === undefined) return { reason: words.app.noSheet(prefix ?? '') };
  if (!from) return { reason: words.app.nowhere(text) };
  return { sheet: on, from, ...(to && { to }) };
}

function sheetCalled(document: Document, text: string): string | undefined {
  const wanted = text.toLowerCase();
  return (
    document.sheetNamed(text)?.id ??
    document.sheets.find(({ properties }) => properties.title.toLowerCase() === wanted)?.id
  );
}
