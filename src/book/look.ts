import type { QuantityName } from '../../functions/quantities/names.ts';
import { readCorner, writeCorner } from '../formula/address.ts';
import type { Layout } from '../formula/types.ts';
import type { Extent } from '../formula/write.ts';
import { extentOf, writeFormula } from '../formula/write.ts';
import { draftOf } from './inside/opened.ts';
import type { Cell, Document, Formula, Id, Place, Sheet } from './types.ts';

/** A position on a sheet, in or beyond its lines in use. Indices from 0. */
export interface Spot {
  readonly sheet: Id;
  readonly row: number;
  readonly column: number;
}

/** What formulas are bound and written with. */
export function layoutOf(document: Document): Layout {
  return draftOf(document);
}

/** `undefined` where no line has come into use yet. */
export function placeAt(document: Document, { sheet, row, column }: Spot): Place | undefined {
  const found = document.sheet(sheet);
  const ids = { row: found?.rows.idAt(row), column: found?.columns.idAt(column) };
  return ids.row === undefined || ids.column === undefined
    ? undefined
    : { sheet, row: ids.row, column: ids.column };
}

/** `undefined` for a place that is no longer in the book. */
export function spotOf(document: Document, { sheet, row, column }: Place): Spot | undefined {
  const found = document.sheet(sheet);
  const at = { row: found?.rows.indexOf(row) ?? -1, column: found?.columns.indexOf(column) ?? -1 };
  return at.row < 0 || at.column < 0 ? undefined : { sheet, ...at };
}

/** `B4`; `undefined` for a place that is no longer in the book. */
export function addressOf(document: Document, place: Place): string | undefined {
  const spot = spotOf(document, place);
  return spot && addressAt(spot);
}

/** `B4` for row 3, column 1. */
export function addressAt({ row, column }: { row: number; column: number }): string {
  return writeCorner({
    row: { index: row, fixed: false },
    column: { index: column, fixed: false },
  });
}

/** Row and column of `B4` or `$B$4`, from 0; `undefined` for anything else. */
export function readAddress(text: string): { row: number; column: number } | undefined {
  const corner = readCorner(text);
  return corner && { row: corner.row.index, column: corner.column.index };
}

export function cellAt(document: Document, { sheet, row, column }: Place): Cell | undefined {
  return document.sheet(sheet)?.cell(row, column);
}

/** The cell at a position; `undefined` where nothing is. */
export function cellAtSpot(document: Document, spot: Spot): Cell | undefined {
  const place = placeAt(document, spot);
  return place && cellAt(document, place);
}

/** A formula in A1 form as seen from a sheet; from nowhere (`null`) every reference names its sheet. */
export function formulaText(document: Document, formula: Formula, from: Id | null): string {
  return writeFormula(formula, from, draftOf(document));
}

/** What the entry line shows for a cell: the formula, or exactly what was typed. */
export function typedText(document: Document, place: Place): string {
  const cell = cellAt(document, place);
  if (!cell) return '';
  return cell.content.kind === 'formula'
    ? formulaText(document, cell.content.formula, place.sheet)
    : (cell.typed ?? '');
}

/** What a formula reads, in the order it is written, each once. */
export type Precedent =
  /** One cell or a rectangle of cells; whole columns reach to row `Infinity`. */
  | { readonly kind: 'cells'; readonly extent: Extent }
  | { readonly kind: 'name'; readonly name: string; readonly defined: boolean };

export function precedentsOf(document: Document, formula: Formula): Precedent[] {
  const layout = draftOf(document);
  const found = new Map<string, Precedent>();
  for (const reference of formula.references) {
    if (reference.kind === 'name') {
      const { name } = reference;
      const defined = document.named(name) !== undefined;
      found.set(`name ${name.toLowerCase()}`, { kind: 'name', name, defined });
    }
    const extent = extentOf(reference, layout);
    if (extent) found.set(Object.values(extent).join(' '), { kind: 'cells', extent });
  }
  return [...found.values()];
}

/** Who reads a cell: formulas and targets of cells, and names. Through names and ranges too. */
export interface Dependent {
  readonly kind: 'formula' | 'target';
  readonly place: Place;
}

export function dependentsOf(document: Document, place: Place): Dependent[] {
  const draft = draftOf(document);
  const spot = spotOf(document, place);
  if (!spot) return [];
  const { uses } = draft;
  const holders = new Set(uses.ofCell(place.sheet, place.row, place.column));
  const covers = (formula: Formula) =>
    formula.references.some((reference) => {
      const extent = extentOf(reference, draft);
      return extent !== undefined && inside(extent, spot);
    });
  for (const holder of uses.rangingOver(place.sheet)) {
    const formula = draft.formulaOf(holder);
    if (formula && covers(formula)) holders.add(holder);
  }
  // A set grows while it is walked through: names lead to those who use them.
  for (const holder of holders) {
    const [kind, id = ''] = holder.split(' ');
    const name = kind === 'name' ? draft.nameWithId(id) : undefined;
    if (name) for (const user of uses.ofName(name.name)) holders.add(user);
  }
  return [...holders].flatMap((holder): Dependent[] => {
    const [kind, sheet = '', row = '', column = ''] = holder.split(' ');
    const user = { sheet, row, column };
    return kind === 'name' || !spotOf(document, user)
      ? []
      : [{ kind: kind === 'target' ? 'target' : 'formula', place: user }];
  });
}

export function inside(extent: Extent, { sheet, row, column }: Spot): boolean {
  return (
    sheet === extent.sheet &&
    row >= extent.top &&
    row <= extent.bottom &&
    column >= extent.left &&
    column <= extent.right
  );
}

/** What the cell measures: its own quantity, else that of the last area over it, else its column's. */
export function quantityAt(document: Document, place: Place): QuantityName | undefined {
  const sheet = document.sheet(place.sheet);
  if (!sheet) return undefined;
  return sheet.cell(place.row, place.column)?.quantity ?? quantityAround(document, sheet, place);
}

/** What the cell would measure if it said nothing itself. */
export function quantityAround(
  document: Document,
  sheet: Sheet,
  place: Place,
): QuantityName | undefined {
  const spot = sheet.areas.length > 0 ? spotOf(document, place) : undefined;
  const area =
    spot &&
    sheet.areas.findLast(({ range }) => {
      const extent = extentOf(range, draftOf(document));
      return extent !== undefined && inside(extent, spot);
    });
  return area?.quantity ?? sheet.columns.properties(place.column)?.quantity;
}
