import type { Entry } from '../../functions/quantities/entry.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { Formula, Id, RangeReference } from '../formula/types.ts';

/** Anything JSON can say. */
export type Json =
  string | number | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Where a cell is, for good: ids, not positions. Row and column ids are unique within their sheet. */
export interface Place {
  readonly sheet: Id;
  readonly row: Id;
  readonly column: Id;
}

/** A rectangle of living cells: its lines in order. */
export interface Block {
  readonly sheet: Id;
  readonly rows: readonly Id[];
  readonly columns: readonly Id[];
}

/** A refused edit, file or journal: one sentence a planner can act on. Nothing was changed. */
export interface Refusal {
  readonly ok: false;
  readonly reason: string;
}

// --- Cells -----------------------------------------------------------------------------------

/** What a cell holds. Values of formulas are the engine's and never stored. */
export type Content =
  | { readonly kind: 'blank' }
  /** In the base unit of the cell's quantity. */
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'truth'; readonly value: boolean }
  | { readonly kind: 'formula'; readonly formula: Formula };

/** The settings that decide how a typed text reads. Kept with each entry. */
export interface EntrySettings {
  readonly decimal: '.' | ',';
  /** Luminance goes with it: cd/m² with lx, fL with fc. */
  readonly illuminance: 'lx' | 'fc';
  readonly length: 'm' | 'ft';
  readonly shutter: 'time' | 'angle';
}

/** Typed on the day; decided in planning; a constant; to be filled in by a student. Else a result. */
export type Role = 'reading' | 'choice' | 'given' | 'answer';

export type Receptor = 'dome' | 'flat';

export interface Format {
  /** Digits after the decimal sign, 0 to 12. */
  readonly decimals?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly align?: 'left' | 'centre' | 'right';
  readonly wrap?: boolean;
  /** A unit of the cell's quantity to show it in, whatever the book's setting. */
  readonly unit?: string;
}

/** A photo on a cell. The picture itself is kept apart, under its hash. */
export interface Photo {
  /** SHA-256 of the picture’s bytes, in hexadecimal. */
  readonly hash: string;
  readonly name: string;
  /** In bytes. */
  readonly size: number;
}

/** When a reading was taken, by the clock on the wall, and with which meter. */
export interface Taken {
  /** `2026-09-23` and `14:05`. */
  readonly date: string;
  readonly time: string;
  readonly meter?: string;
}

/** A cell is a value: an edit puts another in its place. */
export interface Cell {
  readonly content: Content;
  /** Exactly what was typed. Absent in formula cells (their text is written from ids) and blanks. */
  readonly typed?: string;
  /** The settings it was typed under. */
  readonly under?: EntrySettings;
  /** Set by the user or by a unit typed; beats that of an area and of the column. */
  readonly quantity?: QuantityName;
  /** The quantity came with a typed unit alone: another unit typed later takes its place. */
  readonly yields?: true;
  readonly role?: Role;
  readonly format?: Format;
  readonly note?: string;
  /** What the cell should come to: a number in the base unit, or a formula. */
  readonly target?: number | Formula;
  /** In stops; in mired for a colour temperature; in Duv for a tint. */
  readonly tolerance?: number;
  readonly receptor?: Receptor;
  /** Where the meter was pointed: "at the camera", "at the key". */
  readonly pointed?: string;
  /** Of what it holds: it goes when something else is typed. */
  readonly taken?: Taken;
  /** In the order they were taken; never an empty list. */
  readonly photos?: readonly Photo[];
}

// --- Sheets ----------------------------------------------------------------------------------

/** What a column or a row carries. */
export interface LineProperties {
  /** Pixels at zoom 1: width of a column, height of a row. */
  readonly size?: number;
  /** Of the column's cells, unless an area or the cell says otherwise. Columns only. */
  readonly quantity?: QuantityName;
  readonly role?: Role;
  readonly format?: Format;
}

/** The rows or the columns of a sheet. Only living lines are counted and listed. */
export interface Axis {
  readonly ids: readonly Id[];
  readonly length: number;
  idAt(index: number): Id | undefined;
  /** -1 for a line that is gone or unknown. */
  indexOf(id: Id): number;
  properties(id: Id): LineProperties | undefined;
}

/** Part of a sheet, a table or one column of it, whose cells share a quantity. */
export interface Area {
  readonly id: Id;
  readonly range: RangeReference;
  readonly quantity: QuantityName;
}

export const phases = [
  'recce',
  'plan',
  'rig',
  'order',
  'meter',
  'match',
  'log',
  'strike',
  'teach',
] as const;
export type Phase = (typeof phases)[number];

/** Rows of one table left out of view by what they show in one of its columns. */
export interface RowFilter {
  /** The row of captions over the table, and the column. */
  readonly head: Id;
  readonly column: Id;
  /** Texts as they are shown: a row that shows one of them is out of view. */
  readonly hides: readonly string[];
}

export interface SheetProperties {
  /** On its tab and in formulas. Unique in the book without regard to case. */
  readonly name: string;
  /** At the head of the page; the name where it is empty. */
  readonly title: string;
  /** One line: what the sheet is for. */
  readonly purpose: string;
  readonly phase: Phase | null;
  readonly template: string | null;
  /** In stops; `null` for the book's. */
  readonly tolerance: number | null;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  /** `null` where all rows are in view. */
  readonly filter: RowFilter | null;
}

export interface Sheet {
  readonly id: Id;
  readonly properties: SheetProperties;
  readonly rows: Axis;
  readonly columns: Axis;
  /** Later ones beat earlier ones. */
  readonly areas: readonly Area[];
  cell(row: Id, column: Id): Cell | undefined;
  /** Every living cell, column by column, in no stated order within a column. */
  cells(): Iterable<{ readonly row: Id; readonly column: Id; readonly cell: Cell }>;
  /** How many cells there are. */
  readonly size: number;
}

/** Lines a sheet can have. */
export const maxRows = 100_000;
export const maxColumns = 1_000;

// --- The book --------------------------------------------------------------------------------

/** How things are written, and what the book's calculations start from. */
export interface Settings extends EntrySettings {
  readonly fNumber: 'thirds' | 'halves' | 'tenths' | 'decimals';
  /** Hours of a day as they are shown; both are read. */
  readonly clock: '24' | '12';
  /** The receptor of readings that do not say. */
  readonly receptor: Receptor;
  /** Incident constants C of the two receptors, in lx·s (ISO 2720). */
  readonly domeConstant: number;
  readonly flatConstant: number;
  /** Reflected constant K, in cd·s/m² (ISO 2720). */
  readonly reflectedConstant: number;
  readonly mainsHertz: number;
  readonly mainsVolts: number;
  /** Share of a breaker's rating that may be drawn for hours, 0 to 1. */
  readonly continuousShare: number;
  /** ISO 4217 code. */
  readonly currency: string;
  /** In stops. */
  readonly tolerance: number;
  /** IANA name of the time zone. */
  readonly zone: string;
  readonly page: 'A4' | 'A3' | 'Letter' | 'Legal' | 'Tabloid';
  /** Settings that the book carries and this version has no type for. */
  readonly more: { readonly [key: string]: Json };
}

/** A named cell, range or constant. Its formula's references are to fixed places. */
export interface Name {
  readonly id: Id;
  readonly name: string;
  readonly formula: Formula;
}

/** What stands beside the sheets; each is an open list with its own version. */
export const shelves = ['figures', 'fixtures', 'spectra', 'records', 'exercises'] as const;
export type ShelfName = (typeof shelves)[number];
export interface ShelfItem {
  readonly id: Id;
  readonly [key: string]: Json;
}
export interface Shelf {
  readonly version: number;
  readonly items: readonly ShelfItem[];
}

/** A book as readers see it. It changes only through `Book.run`, `undo` and `redo`. */
export interface Document {
  readonly title: string;
  readonly settings: Settings;
  /** In the order of the contents. */
  readonly sheets: readonly Sheet[];
  /** A living sheet. */
  sheet(id: Id): Sheet | undefined;
  /** Without regard to case. */
  sheetNamed(name: string): Sheet | undefined;
  /** In alphabetical order, without regard to case. */
  readonly names: readonly Name[];
  /** Without regard to case. */
  named(name: string): Name | undefined;
  shelf(name: ShelfName): Shelf;
}

// --- What comes from outside -------------------------------------------------------------------

/**
 * Reads what was typed into a cell: `readEntry` of functions/quantities with `writingSettings`
 * (settings.ts). Formulas (a text that
 * begins with `=`) never get here.
 */
export type ReadEntry = (
  text: string,
  quantity: QuantityName | undefined,
  settings: Settings,
) => Entry;

/** What the makers of transactions need besides the document. */
export interface Means {
  /** A new id, never given before. */
  newId(): Id;
  readEntry: ReadEntry;
  /** Without regard to case: a cell may not be named like a function. */
  isFunction(name: string): boolean;
}
