import type { WrittenCorner, WrittenEnd } from './address.ts';
import { readColumn, readCorner, readRow } from './address.ts';
import { splitSheetPrefix } from './sheetprefix.ts';
import type { Token } from './tokens.ts';
import { words } from '../words/words.ts';

/** A reference as written, before it is bound to the lines of a book. `sheet` is a name. */
export type WrittenReference =
  | { readonly kind: 'cell'; readonly sheet: string | undefined; readonly at: WrittenCorner }
  | {
      readonly kind: 'range';
      readonly sheet: string | undefined;
      readonly from: WrittenCorner;
      readonly to: WrittenCorner;
      readonly joint: string;
    }
  | {
      readonly kind: 'columns' | 'rows';
      readonly sheet: string | undefined;
      readonly from: WrittenEnd;
      readonly to: WrittenEnd;
      readonly joint: string;
    }
  | { readonly kind: 'name'; readonly name: string };

const namePattern = /^[\p{L}_][\p{L}\p{N}\p{M}_.]*$/u;

/** Reads a token that refers to something; a sentence when it is a kind of reference not used here. */
export function readReference(token: Token): WrittenReference | { readonly reason: string } {
  if (token.kind === 'name') return readName(token.text);
  const { from, joint, to } = token.parts ?? splitRange(token.text);
  const { sheet, rest } = splitSheetPrefix(from);
  if (sheet?.includes('[')) return { reason: words.formula.otherFile };
  if (sheet?.includes(':')) return { reason: words.formula.oneSheet };
  if (to === undefined) {
    const at = readCorner(rest);
    return at ? { kind: 'cell', sheet, at } : unreadable(token.text);
  }
  const end = splitSheetPrefix(to);
  if (end.sheet !== undefined && end.sheet.toLowerCase() !== sheet?.toLowerCase())
    return { reason: words.formula.rangeOneSheet };
  return readRange(sheet, rest, joint, end.rest) ?? unreadable(token.text);
}

function readRange(
  sheet: string | undefined,
  start: string,
  joint: string,
  end: string,
): WrittenReference | undefined {
  const corners = { from: readCorner(start), to: readCorner(end) };
  if (corners.from && corners.to)
    return { kind: 'range', sheet, from: corners.from, to: corners.to, joint };
  const columns = { from: readColumn(start), to: readColumn(end) };
  if (columns.from && columns.to)
    return { kind: 'columns', sheet, from: columns.from, to: columns.to, joint };
  const rows = { from: readRow(start), to: readRow(end) };
  if (rows.from && rows.to) return { kind: 'rows', sheet, from: rows.from, to: rows.to, joint };
  return undefined;
}

function readName(text: string): WrittenReference | { readonly reason: string } {
  if (text.includes('!')) return { reason: words.formula.nameNoSheet };
  return namePattern.test(text) ? { kind: 'name', name: text } : unreadable(text);
}

function splitRange(text: string): { from: string; joint: string; to: string | undefined } {
  const colon = text.indexOf(':', text.lastIndexOf('!') + 1);
  return colon < 0
    ? { from: text, joint: '', to: undefined }
    : { from: text.slice(0, colon), joint: ':', to: text.slice(colon + 1) };
}

function unreadable(text: string): { readonly reason: string } {
  return { reason: words.formula.unreadable(text) };
}
