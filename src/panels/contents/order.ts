import type { Phase } from '../../book/types.ts';
import type { SheetEntry } from '../shown.ts';

/**
 * The place in the book that a sheet takes when it moves one up or down among its own phase, where
 * the contents show it. Undefined at the end of its group.
 */
export function neighbour(
  sheets: readonly SheetEntry[],
  id: string,
  way: -1 | 1,
): number | undefined {
  const phase = sheets.find((sheet) => sheet.id === id)?.phase;
  const group = sheets.filter((sheet) => sheet.phase === phase);
  const other = group[group.findIndex((sheet) => sheet.id === id) + way];
  return other ? sheets.indexOf(other) : undefined;
}

/** Before or after a sheet of the contents, where another is let go. */
export interface Gap {
  readonly beside: string;
  readonly after: boolean;
}

/**
 * What a sheet becomes that is let go in a gap: its place in the book, counted without itself, and
 * the phase of the sheet it stands beside. Undefined where it stays as the contents show it.
 */
export function letGo(
  sheets: readonly SheetEntry[],
  id: string,
  { beside, after }: Gap,
): { readonly to: number; readonly phase: Phase | null } | undefined {
  const phase = sheets.find((sheet) => sheet.id === beside)?.phase;
  const others = sheets.filter((sheet) => sheet.id !== id);
  const at = others.findIndex((sheet) => sheet.id === beside);
  if (phase === undefined || at < 0) return undefined;
  const to = after ? at + 1 : at;
  const shown = (all: readonly SheetEntry[]) =>
    all.filter((sheet) => sheet.phase === phase || sheet.id === id).map((sheet) => sheet.id);
  const moved = sheets.find((sheet) => sheet.id === id);
  if (!moved) return undefined;
  const isSame =
    moved.phase === phase &&
    shown(others.toSpliced(to, 0, moved)).join(' ') === shown(sheets).join(' ');
  return isSame ? undefined : { to, phase };
}
