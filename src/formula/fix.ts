import type { WrittenCorner, WrittenEnd } from './address.ts';
import { writeColumn, writeCorner, writeRow } from './address.ts';
import { writeSheetPrefix } from './sheetprefix.ts';
import { tokensOf } from './tokens.ts';
import { readReference, type WrittenReference } from './written.ts';

/** What `$` stands before, in the order in which the key goes through it: A1, $A$1, A$1, $A1. */
const order = [
  { row: false, column: false },
  { row: true, column: true },
  { row: true, column: false },
  { row: false, column: true },
] as const;

/**
 * The formula with the next `$` in the reference that the caret stands in or at, and the caret behind
 * that reference. Both corners of a block follow its first. `undefined` where no reference is.
 */
export function fixAtCaret(
  text: string,
  caret: number,
): { readonly text: string; readonly caret: number } | undefined {
  if (!text.startsWith('=')) return undefined;
  const token = tokensOf(text).find(
    ({ kind, start, end }) => kind === 'reference' && start <= caret && caret <= end,
  );
  const reference = token && readReference(token);
  if (!token || !reference || 'reason' in reference) return undefined;
  const next = written(reference);
  if (next === undefined) return undefined;
  return {
    text: text.slice(0, token.start) + next + text.slice(token.end),
    caret: token.start + next.length,
  };
}

function written(reference: WrittenReference): string | undefined {
  switch (reference.kind) {
    case 'name':
      return undefined;
    case 'cell':
      return prefixOf(reference) + writeCorner(turned(reference.at, after(reference.at)));
    case 'range': {
      const next = after(reference.from);
      const end = (corner: WrittenCorner) => writeCorner(turned(corner, next));
      return prefixOf(reference) + end(reference.from) + reference.joint + end(reference.to);
    }
    case 'rows':
    case 'columns': {
      const write = reference.kind === 'rows' ? writeRow : writeColumn;
      const fixed = !reference.from.fixed;
      const end = ({ index }: WrittenEnd) => write({ index, fixed });
      return prefixOf(reference) + end(reference.from) + reference.joint + end(reference.to);
    }
  }
}

function prefixOf({ sheet }: { readonly sheet: string | undefined }): string {
  return sheet === undefined ? '' : writeSheetPrefix(sheet);
}

type Fixing = (typeof order)[number];

function after({ row, column }: WrittenCorner): Fixing {
  const now = order.findIndex((one) => one.row === row.fixed && one.column === column.fixed);
  return order[(now + 1) % order.length] ?? order[0];
}

function turned({ row, column }: WrittenCorner, next: Fixing): WrittenCorner {
  return {
    row: { ...row, fixed: next.row },
    column: { ...column, fixed: next.column },
  };
}
