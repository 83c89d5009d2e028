import { formulaFrom } from '../../formula/bind.ts';
import type { Spot } from '../look.ts';
import { addressAt, cellAtSpot, placeAt, quantityAround, typedText } from '../look.ts';
import type {
  CellAt,
  Document,
  Id,
  Means,
  Refusal,
  Settings,
  Taken,
  Transaction,
} from '../types.ts';
import { withEntry } from './entered.ts';
import { Growing, beyondSheet } from './growing.ts';
import { refused } from './made.ts';
import { readInto, type Read } from './readInto.ts';
import { words } from '../../words/words.ts';

/** A text for a cell. */
export interface Entry extends Spot {
  readonly text: string;
  /** Settings to read it under, where they are not the book's: a decimal comma in a pasted file. */
  readonly under?: Partial<Settings>;
  /** When and with what it was metered. */
  readonly taken?: Taken;
}

/** An entry that could not be read; its text is in no cell. */
export interface Unread extends Entry {
  readonly reason: string;
  /** In a formula: the character that the reason is about. */
  readonly at?: number;
}

export interface Enterings {
  readonly ok: true;
  readonly transaction: Transaction;
  readonly unread: readonly Unread[];
  /** A sentence that helps and stops no one: how `1/50` in a plain cell could be meant. */
  readonly hints: readonly (Spot & { readonly hint: string })[];
}

/**
 * Types texts into cells. A text that begins with `=` is a formula; others are read by the cell's
 * quantity. Text as it already stands in the cell is no edit. One unreadable text refuses the whole,
 * unless `keepGoing`: then it is left out and listed.
 */
export function enter(
  document: Document,
  means: Means,
  entries: readonly Entry[],
  { keepGoing = false, label }: { keepGoing?: boolean; label?: string } = {},
): Enterings | (Refusal & { readonly unread: readonly Unread[] }) {
  const growing = new Growing(document, means);
  const cells = new Map<Id, CellAt[]>();
  const unread: Unread[] = [];
  const hints: (Spot & { hint: string })[] = [];
  for (const entry of entries) {
    // The same again with a new stamp is metered again.
    if (isAsItStands(document, entry) && !entry.taken) continue;
    const entered = read(document, means, growing, entry);
    if ('reason' in entered) {
      unread.push({ ...entry, ...entered });
      if (!keepGoing) return { ...refused(entered.reason), unread };
      continue;
    }
    if (entered.hint !== undefined) hints.push({ ...spotOnly(entry), hint: entered.hint });
    const { taken } = entry;
    const stamp = taken && entered.entered.content.kind !== 'blank' ? { taken } : {};
    const cell = withEntry(cellAtSpot(document, entry), { ...entered.entered, ...stamp });
    const [row, column] = linesOf(growing, entry);
    const ofSheet = cells.get(entry.sheet) ?? [];
    if (row !== undefined && column !== undefined) ofSheet.push({ row, column, cell });
    cells.set(entry.sheet, ofSheet);
  }
  const sets = [...cells].map(([sheet, at]) => ({ kind: 'setCells', sheet, cells: at }) as const);
  const steps = sets.length > 0 ? [...growing.steps, ...sets] : [];
  const transaction = { label: label ?? labelFor(entries), steps, ...goTo(sets) };
  return { ok: true, transaction, unread, hints };
}

function goTo(sets: readonly { readonly sheet: Id; readonly cells: readonly CellAt[] }[]) {
  const [first] = sets;
  if (!first) return {};
  const rows = [...new Set(first.cells.map(({ row }) => row))];
  const columns = [...new Set(first.cells.map(({ column }) => column))];
  return { go: { sheet: first.sheet, rows, columns } };
}

function labelFor(entries: readonly Entry[]): string {
  const [only] = entries;
  return entries.length === 1 && only
    ? words.book.enterCell(addressAt(only))
    : words.book.enterCells(entries.length);
}

const spotOnly = ({ sheet, row, column }: Spot): Spot => ({ sheet, row, column });

function isAsItStands(document: Document, entry: Entry): boolean {
  const place = placeAt(document, entry);
  return (place ? typedText(document, place) : '') === entry.text;
}

function linesOf(growing: Growing, { sheet, row, column }: Spot) {
  return [growing.lineAt(sheet, 'rows', row), growing.lineAt(sheet, 'columns', column)] as const;
}

function read(document: Document, means: Means, growing: Growing, entry: Entry): Read {
  const sheet = document.sheet(entry.sheet);
  if (!sheet) return { reason: words.book.sheetGone };
  const fits =
    growing.has(sheet.id, 'rows', entry.row) && growing.has(sheet.id, 'columns', entry.column);
  if (!fits) return { reason: beyondSheet };
  if (entry.text === '') return { entered: { content: { kind: 'blank' } } };
  if (entry.text.startsWith('=')) {
    const formula = formulaFrom(entry.text, sheet.id, growing);
    return 'reason' in formula ? formula : { entered: { content: { kind: 'formula', formula } } };
  }
  return readText(document, means, entry);
}

function readText(document: Document, means: Means, entry: Entry): Read {
  const sheet = document.sheet(entry.sheet);
  const place = placeAt(document, entry);
  const cell = place && sheet?.cell(place.row, place.column);
  const column = sheet?.columns.idAt(entry.column);
  // A column speaks for its rows before they are in use.
  const around =
    sheet && column !== undefined
      ? quantityAround(document, sheet, { sheet: sheet.id, row: place?.row ?? '', column })
      : undefined;
  return readInto(means, cell, around, entry.text, { ...document.settings, ...entry.under });
}
