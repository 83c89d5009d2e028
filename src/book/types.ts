import type { Entry } from '../../functions/quantities/entry.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { AxisName, Formula, Id, RangeReference } from '../formula/types.ts';

export type { AxisName, Formula, Id } from '../formula/types.ts';

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
export const shelves = ['figures', 'fixtures', 'spectra', 'records'] as const;
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

// --- Changing it -----------------------------------------------------------------------------

/** One change as a value. `applyStep` is in steps/apply.ts, `stepToJson` and back in stepjson.ts. */
export type Step =
  | SetCellsStep
  | SortStep
  | MoveCellsStep
  | InsertLinesStep
  | DropLinesStep
  | RemoveLinesStep
  | ReviveLinesStep
  | MoveLinesStep
  | ReturnLinesStep
  | SetLinesStep
  | AddSheetStep
  | DropSheetStep
  | RemoveSheetStep
  | ReviveSheetStep
  | MoveSheetStep
  | SetSheetStep
  | SetAreasStep
  | DefineNameStep
  | RenameNameStep
  | RemoveNameStep
  | SetTitleStep
  | SetSettingsStep
  | SetShelfStep;

/** Puts whole cells in place. `null` empties a cell and forgets its properties. */
export interface SetCellsStep {
  readonly kind: 'setCells';
  readonly sheet: Id;
  readonly cells: readonly CellAt[];
}
export interface CellAt {
  readonly row: Id;
  readonly column: Id;
  readonly cell: Cell | null;
}

/** The contents of row `order[i]` of the block come to stand in row `i`. Row ids stay. */
export interface SortStep {
  readonly kind: 'sort';
  readonly block: Block;
  readonly order: readonly number[];
}

/** Cut and paste: both blocks have the same number of rows and of columns. */
export interface MoveCellsStep {
  readonly kind: 'moveCells';
  readonly from: Block;
  readonly to: Block;
}

/** New lines right after the line `after`, gone or not; `null` puts them first. */
export interface InsertLinesStep {
  readonly kind: 'insertLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly ids: readonly Id[];
  readonly after: Id | null;
}

/** Takes back an insertion: the lines must be empty. */
export interface DropLinesStep {
  readonly kind: 'dropLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly ids: readonly Id[];
}

/** Deletes lines: they stay in memory, marked gone, with their cells. */
export interface RemoveLinesStep {
  readonly kind: 'removeLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly ids: readonly Id[];
}

/** Takes back a deletion. */
export interface ReviveLinesStep {
  readonly kind: 'reviveLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly ids: readonly Id[];
}

/**
 * Moves lines, in their present order: `ids[i]` right after `after[i]` (`null`: first). A range with
 * one corner among them keeps to the nearest line that stayed; with both it goes along.
 */
export interface MoveLinesStep {
  readonly kind: 'moveLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly ids: readonly Id[];
  readonly after: readonly (Id | null)[];
}

/** Takes back a move of lines; ranges are left as they are. */
export interface ReturnLinesStep {
  readonly kind: 'returnLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly ids: readonly Id[];
  readonly after: readonly (Id | null)[];
}

/** Widths, heights, a column's quantity. `null` forgets them. */
export interface SetLinesStep {
  readonly kind: 'setLines';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly lines: readonly { readonly id: Id; readonly properties: LineProperties | null }[];
}

/** A sheet as a value: for adding, duplicating, templates and imports. */
export interface SheetContent {
  readonly id: Id;
  readonly properties: SheetProperties;
  readonly rows: readonly Id[];
  readonly columns: readonly Id[];
  readonly rowProperties: readonly { readonly id: Id; readonly properties: LineProperties }[];
  readonly columnProperties: readonly { readonly id: Id; readonly properties: LineProperties }[];
  readonly areas: readonly Area[];
  readonly cells: readonly { readonly row: Id; readonly column: Id; readonly cell: Cell }[];
}

export interface AddSheetStep {
  readonly kind: 'addSheet';
  readonly content: SheetContent;
  readonly at: number;
}

/** Takes back the adding of a sheet. */
export interface DropSheetStep {
  readonly kind: 'dropSheet';
  readonly sheet: Id;
}

/** Deletes a sheet: it stays in memory, and references to it read `#REF!`. */
export interface RemoveSheetStep {
  readonly kind: 'removeSheet';
  readonly sheet: Id;
}

/** Takes back the deletion of a sheet. */
export interface ReviveSheetStep {
  readonly kind: 'reviveSheet';
  readonly sheet: Id;
  readonly at: number;
}

export interface MoveSheetStep {
  readonly kind: 'moveSheet';
  readonly sheet: Id;
  readonly to: number;
}

/** Also renames: formulas show the new name of themselves. */
export interface SetSheetStep {
  readonly kind: 'setSheet';
  readonly sheet: Id;
  readonly properties: Partial<SheetProperties>;
}

export interface SetAreasStep {
  readonly kind: 'setAreas';
  readonly sheet: Id;
  readonly areas: readonly Area[];
}

/** A new name, or another meaning or spelling for the one with this id; formulas stay as they are. */
export interface DefineNameStep {
  readonly kind: 'defineName';
  readonly name: Name;
}

/** Rewrites the formulas that use it. */
export interface RenameNameStep {
  readonly kind: 'renameName';
  readonly id: Id;
  readonly name: string;
}

/** Formulas that use it read `#NAME?`. */
export interface RemoveNameStep {
  readonly kind: 'removeName';
  readonly id: Id;
}

export interface SetTitleStep {
  readonly kind: 'setTitle';
  readonly title: string;
}

export interface SetSettingsStep {
  readonly kind: 'setSettings';
  readonly settings: Partial<Settings>;
}

/** Puts items on a shelf (figures, fixtures, spectra, records), or takes them off. */
export interface SetShelfStep {
  readonly kind: 'setShelf';
  readonly shelf: ShelfName;
  readonly items: readonly { readonly id: Id; readonly item: ShelfItem | null }[];
}

/** One gesture: all of it happens or nothing. */
export interface Transaction {
  /** For the undo command: "Fill down", "Delete 2 rows". */
  readonly label: string;
  readonly steps: readonly Step[];
  /** Where undo and redo should take the eye. Positions live in ids. */
  readonly go?: Block;
}

// --- Hearing of it ---------------------------------------------------------------------------

/** What happened, in the order it happened. Indices are positions at that moment, from 0. */
export type Effect =
  /** These cells have other contents or properties now. Formulas rewritten by a move count. */
  | { readonly kind: 'cells'; readonly sheet: Id; readonly cells: readonly CellTouched[] }
  | LinesEffect
  | { readonly kind: 'lineProperties'; readonly sheet: Id; readonly axis: AxisName }
  | { readonly kind: 'sheetAdded'; readonly sheet: Id; readonly at: number }
  | { readonly kind: 'sheetRemoved'; readonly sheet: Id; readonly at: number }
  | { readonly kind: 'sheetMoved'; readonly sheet: Id; readonly from: number; readonly to: number }
  | { readonly kind: 'sheetProperties'; readonly sheet: Id; readonly renamed: boolean }
  | { readonly kind: 'areas'; readonly sheet: Id }
  /** The name is defined anew, means something else, has another spelling or is gone. */
  | {
      readonly kind: 'name';
      readonly id: Id;
      readonly before: string | null;
      readonly after: string | null;
    }
  | { readonly kind: 'title' }
  | { readonly kind: 'settings'; readonly keys: readonly (keyof Settings)[] }
  | { readonly kind: 'shelf'; readonly shelf: ShelfName; readonly ids: readonly Id[] };

export interface CellTouched {
  readonly row: Id;
  readonly column: Id;
  /** Content, quantity or target changed. False when only format, note and the like did. */
  readonly content: boolean;
}

/**
 * Lines came or went: `spans` are runs of neighbours, from low to high. For `inserted` they count
 * positions after, for `removed` positions before. A move is a `removed` and an `inserted` with
 * `moved` true; cells keep their ids throughout.
 */
export interface LinesEffect {
  readonly kind: 'linesInserted' | 'linesRemoved';
  readonly sheet: Id;
  readonly axis: AxisName;
  readonly spans: readonly { readonly at: number; readonly count: number }[];
  readonly moved: boolean;
  /** Lines at the end came into use, or that was taken back: no other line changed its position. */
  readonly tail: boolean;
}

export interface Change {
  readonly kind: 'do' | 'undo' | 'redo';
  readonly transaction: Transaction;
  readonly effects: readonly Effect[];
  /** Lines, sheets or names changed (beyond a new last line), so the text of formulas may have. */
  readonly structure: boolean;
}

export type Listener = (change: Change) => void;

/** The only way to change a document. */
export interface Book {
  readonly document: Document;
  /** Does all of it or, with a reason, nothing. A transaction without steps does nothing. */
  run(transaction: Transaction): { readonly ok: true; readonly change: Change | null } | Refusal;
  /** `null` when there is nothing to take back. */
  undo(): Change | null;
  redo(): Change | null;
  readonly history: History;
  /** Called after each change, in the order of listening. Returns how to stop. */
  listen(listener: Listener): () => void;
}

export interface History {
  /** What has been done, oldest first. */
  readonly done: readonly Transaction[];
  /** What has been taken back, the next to redo last. */
  readonly undone: readonly Transaction[];
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
