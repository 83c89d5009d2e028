import { formulaToJson } from '../formula/codec.ts';
import { plainCell, same } from './form/same.ts';
import { draftOf } from './inside/opened.ts';
import type { DraftSheet } from './inside/sheet.ts';
import type { Document, Id, Settings, SheetProperties, ShelfName } from './types.ts';
import { shelves } from './types.ts';

/**
 * What is otherwise in a later state of a book than in an earlier one. Told by ids, so that a cell
 * that moved with its row is the same cell.
 */
export interface Differences {
  readonly title: boolean;
  readonly settings: readonly (keyof Settings)[];
  /** In the order of the later state, those that are gone last. Unchanged sheets are left out. */
  readonly sheets: readonly SheetDifference[];
  /** The sheets stand in another order. */
  readonly order: boolean;
  /** Ids of names that came, went or mean something else. */
  readonly names: readonly Id[];
  readonly shelves: readonly { readonly shelf: ShelfName; readonly items: number }[];
}

export interface SheetDifference {
  readonly sheet: Id;
  readonly kind: 'added' | 'removed' | 'changed';
  readonly properties: readonly (keyof SheetProperties)[];
  readonly rows: LinesDifference;
  readonly columns: LinesDifference;
  readonly areas: boolean;
  readonly cells: readonly CellDifference[];
}

export interface LinesDifference {
  readonly added: number;
  readonly removed: number;
  readonly reordered: boolean;
  /** Of lines in both: width, height, quantity, role or format is another. */
  readonly changed: number;
}

export interface CellDifference {
  readonly row: Id;
  readonly column: Id;
  readonly aspects: readonly Aspect[];
}

export const aspects = [
  'content',
  'quantity',
  'role',
  'format',
  'note',
  'target',
  'tolerance',
  'receptor',
  'pointed',
  'taken',
  'photos',
] as const;
/** `content`: what was typed, or the formula. */
export type Aspect = (typeof aspects)[number];

export function differencesOf(before: Document, after: Document): Differences {
  const old = draftOf(before);
  const now = draftOf(after);
  const stayed = now.sheets.filter(({ id }) => old.sheet(id)).map(({ id }) => id);
  const keys = Object.keys(after.settings) as (keyof Settings)[];
  return {
    title: before.title !== after.title,
    settings: keys.filter((key) => !same(before.settings[key], after.settings[key])),
    sheets: [
      ...now.sheets.flatMap((sheet) => sheetDifference(old.sheet(sheet.id), sheet) ?? []),
      ...old.sheets
        .filter(({ id }) => !now.sheet(id))
        .map((sheet) => ({ ...unchanged(sheet.id), kind: 'removed' as const })),
    ],
    order: !same(
      stayed,
      old.sheets.filter(({ id }) => now.sheet(id)).map(({ id }) => id),
    ),
    names: differing(namesIn(before), namesIn(after)),
    shelves: shelves.flatMap((shelf) => {
      const items = differing(itemsOn(before, shelf), itemsOn(after, shelf)).length;
      return items > 0 ? [{ shelf, items }] : [];
    }),
  };
}

/** Whether a planner would call the two states the same. */
export const areAlike = ({
  title,
  settings,
  sheets,
  order,
  names,
  shelves,
}: Differences): boolean =>
  !title && !order && [settings, sheets, names, shelves].every(({ length }) => length === 0);

const namesIn = ({ names }: Document) =>
  new Map(names.map(({ id, name, formula }) => [id, { name, formula: formulaToJson(formula) }]));
const itemsOn = (document: Document, shelf: ShelfName) =>
  new Map(document.shelf(shelf).items.map((item) => [item.id, item]));

function differing(before: ReadonlyMap<Id, unknown>, after: ReadonlyMap<Id, unknown>): Id[] {
  const ids = [...new Set([...before.keys(), ...after.keys()])];
  return ids.filter((id) => !same(before.get(id), after.get(id)));
}

const sameLines: LinesDifference = { added: 0, removed: 0, reordered: false, changed: 0 };
const unchanged = (sheet: Id) => ({
  sheet,
  properties: [],
  rows: sameLines,
  columns: sameLines,
  areas: false,
  cells: [],
});

function sheetDifference(
  before: DraftSheet | undefined,
  after: DraftSheet,
): SheetDifference | undefined {
  if (!before) return { ...unchanged(after.id), kind: 'added' };
  const keys = Object.keys(after.properties) as (keyof SheetProperties)[];
  const found: SheetDifference = {
    sheet: after.id,
    kind: 'changed',
    properties: keys.filter((key) => before.properties[key] !== after.properties[key]),
    rows: linesDifference(before, after, 'rows'),
    columns: linesDifference(before, after, 'columns'),
    areas: !same(before.areas, after.areas),
    cells: cellDifferences(before, after),
  };
  const { properties, rows, columns, areas, cells } = unchanged(after.id);
  const { kind } = found;
  return same(found, { sheet: after.id, kind, properties, rows, columns, areas, cells })
    ? undefined
    : found;
}

function linesDifference(
  before: DraftSheet,
  after: DraftSheet,
  axis: 'rows' | 'columns',
): LinesDifference {
  const old = before.lines(axis);
  const now = after.lines(axis);
  const stayed = now.ids.filter((id) => old.indexOf(id) >= 0);
  const changed = stayed.filter((id) => !same(old.properties(id), now.properties(id)));
  return {
    added: now.length - stayed.length,
    removed: old.length - stayed.length,
    reordered: !same(
      stayed,
      old.ids.filter((id) => now.indexOf(id) >= 0),
    ),
    changed: changed.length,
  };
}

/** Row by row as they stand later; those whose line is gone come after. */
function cellDifferences(before: DraftSheet, after: DraftSheet): CellDifference[] {
  const found: CellDifference[] = [];
  const look = (sheet: DraftSheet, only: (row: Id, column: Id) => boolean): void => {
    const cells = [...sheet.cells()].filter(({ row, column }) => only(row, column));
    const at = ({ row, column }: { row: Id; column: Id }) =>
      sheet.rows.indexOf(row) * 1_000 + sheet.columns.indexOf(column);
    for (const { row, column } of cells.toSorted((a, b) => at(a) - at(b))) {
      const changed = aspectsOf(before, after, row, column);
      if (changed.length > 0) found.push({ row, column, aspects: changed });
    }
  };
  const lives = (sheet: DraftSheet, row: Id, column: Id) =>
    sheet.rows.indexOf(row) >= 0 && sheet.columns.indexOf(column) >= 0;
  look(after, () => true);
  look(before, (row, column) => !(lives(after, row, column) && after.cell(row, column)));
  return found;
}

/** What of a cell is otherwise. */
function aspectsOf(before: DraftSheet, after: DraftSheet, row: Id, column: Id): Aspect[] {
  const [old, now] = [before, after].map((sheet) => {
    const lives = sheet.rows.indexOf(row) >= 0 && sheet.columns.indexOf(column) >= 0;
    const cell = lives ? sheet.cell(row, column) : undefined;
    if (!cell) return {};
    const { typed, number, text, truth, formula, under, yields: _, ...rest } = plainCell(cell);
    const content = { typed, number, text, truth, formula, under };
    return { ...rest, ...(same(content, {}) ? {} : { content }) };
  }) as [Readonly<Record<string, unknown>>, Readonly<Record<string, unknown>>];
  return aspects.filter((aspect) => !same(old[aspect], now[aspect]));
}
