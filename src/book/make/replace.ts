import type { Spot } from '../look.ts';
import { placeAt, typedText } from '../look.ts';
import type { Document, Id, Means } from '../types.ts';
import type { Enterings } from './enter.ts';
import { enter } from './enter.ts';
import type { Region } from './growing.ts';
import { words } from '../../words/words.ts';

export interface Search {
  readonly find: string;
  readonly matchCase?: boolean;
  /** The whole of what was typed, not a part of it. */
  readonly whole?: boolean;
  /** Also in the text of formulas. */
  readonly inFormulas?: boolean;
  /** Where to look; the whole book without it. */
  readonly within?: Region | { readonly sheet: Id };
}

/** The cells whose typed text matches, sheet by sheet, row by row. */
export function findCells(document: Document, search: Search): Spot[] {
  const pattern = patternOf(search, 'u');
  return pattern
    ? spotsIn(document, search).filter((spot) => pattern.test(textAt(document, spot, search)))
    : [];
}

/**
 * Replaces in what was typed; each text is then read anew as if typed. Texts that could not be read
 * any more stay as they are and are listed.
 */
export function replaceAll(
  document: Document,
  means: Means,
  search: Search,
  by: string,
): Enterings & { readonly replaced: number } {
  const pattern = patternOf(search, 'gu');
  const entries = findCells(document, search).map((spot) => {
    const text = textAt(document, spot, search);
    return { ...spot, text: pattern ? text.replace(pattern, () => by) : text };
  });
  const label = words.book.replaceInCells(entries.length);
  const result = enter(document, means, entries, { keepGoing: true, label });
  if (!result.ok) throw new Error(result.reason);
  return { ...result, replaced: entries.length - result.unread.length };
}

function patternOf(
  { find, matchCase = false, whole = false }: Search,
  flags: string,
): RegExp | undefined {
  if (find === '') return undefined;
  const literal = find.replace(/[\\^$.*+?()[\]{}|/]/g, '\\$&');
  return new RegExp(whole ? `^${literal}$` : literal, matchCase ? flags : `${flags}i`);
}

function textAt(document: Document, spot: Spot, { inFormulas = false }: Search): string {
  const place = placeAt(document, spot);
  const text = place ? typedText(document, place) : '';
  return text.startsWith('=') && !inFormulas ? '' : text;
}

function spotsIn(document: Document, { within }: Search): Spot[] {
  const sheets = document.sheets.filter(({ id }) => !within || within.sheet === id);
  return sheets.flatMap((sheet) => {
    const spots: Spot[] = [];
    for (const { row, column } of sheet.cells()) {
      const spot = {
        sheet: sheet.id,
        row: sheet.rows.indexOf(row),
        column: sheet.columns.indexOf(column),
      };
      if (!within || !('top' in within) || isIn(within, spot)) spots.push(spot);
    }
    return spots.toSorted((a, b) => a.row - b.row || a.column - b.column);
  });
}

function isIn({ top, left, height, width }: Region, { row, column }: Spot): boolean {
  return row >= top && row < top + height && column >= left && column < left + width;
}
