import type { AxisName, Id } from '../formula/types.ts';
import type {
  Area,
  Block,
  Cell,
  LineProperties,
  Name,
  Settings,
  SheetProperties,
  ShelfItem,
  ShelfName,
} from './documenttypes.ts';

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
  readonly go?: Block | undefined;
}
