/** Short text without blanks that names a sheet, a row or a column for good. */
export type Id = string;

/** One end of a reference on one axis. `fixed` is the `$` in front of it. */
export interface LineEnd {
  readonly id: Id;
  readonly fixed: boolean;
}

/** A corner of a range, or a single cell: a row and a column, each fixed or not. */
export interface Corner {
  readonly row: LineEnd;
  readonly column: LineEnd;
}

/** `explicit`: the sheet was written out although it is the formula's own. */
interface OnSheet {
  readonly sheet: Id;
  readonly explicit: boolean;
}

/** `B4` or `Walk!$B$4`. Its line may be gone from the sheet: then it reads `#REF!`. */
export interface CellReference extends OnSheet {
  readonly kind: 'cell';
  readonly at: Corner;
}

/**
 * `A2:C10`. `from` is the top left corner and `to` the bottom right one, however it was typed.
 * `joint` is what stood between the corners, a colon with or without blanks.
 * A corner that is gone reads as the nearest living line inside; none left reads `#REF!`.
 */
export interface RangeReference extends OnSheet {
  readonly kind: 'range';
  readonly from: Corner;
  readonly to: Corner;
  readonly joint: string;
}

/** `A:C` (whole columns) or `2:4` (whole rows). */
export interface LinesReference extends OnSheet {
  readonly kind: 'columns' | 'rows';
  readonly from: LineEnd;
  readonly to: LineEnd;
  readonly joint: string;
}

/** A named cell, range or constant. Looked up without regard to case; unknown reads `#NAME?`. */
export interface NameReference {
  readonly kind: 'name';
  readonly name: string;
}

/** A reference that points nowhere any more, or beyond the sheet. Reads `#REF!`. */
export interface LostReference {
  readonly kind: 'lost';
}

export type Reference =
  CellReference | RangeReference | LinesReference | NameReference | LostReference;

export type BinaryOperator =
  '+' | '-' | '*' | '/' | '^' | '&' | '=' | '<>' | '<' | '>' | '<=' | '>=';

/** A formula as a tree. References are slots, numbered in the order they are written. */
export type Node =
  | { readonly kind: 'number'; readonly value: number }
  | { readonly kind: 'text'; readonly value: string }
  | { readonly kind: 'truth'; readonly value: boolean }
  | { readonly kind: 'error'; readonly value: string }
  | { readonly kind: 'reference'; readonly slot: number }
  | Call
  | { readonly kind: 'sign'; readonly operator: '+' | '-'; readonly argument: Node }
  | { readonly kind: 'percent'; readonly argument: Node }
  | {
      readonly kind: 'binary';
      readonly operator: BinaryOperator;
      readonly left: Node;
      readonly right: Node;
    }
  | { readonly kind: 'array'; readonly rows: readonly (readonly Node[])[] };

/** `null` is an argument left out: `F(1,)` has two arguments, the second `null`. `F()` has none. */
export interface Call {
  readonly kind: 'call';
  /** In capitals. */
  readonly name: string;
  readonly arguments: readonly (Node | null)[];
}

/**
 * What formulas that differ only in their references have in common.
 * Shapes are shared between formulas and never change: a filled column has one.
 */
export interface Shape {
  /** The text around the references: one piece more than there are references. Begins with `=`. */
  readonly pieces: readonly string[];
  readonly tree: Node;
}

/** A formula bound to ids. A value: nothing in it ever changes. */
export interface Formula {
  readonly shape: Shape;
  readonly references: readonly Reference[];
}

/** Why a text is not a formula, as a sentence, and the character it is about (0 is the `=`). */
export interface FormulaFault {
  readonly reason: string;
  readonly at: number;
}

/**
 * What binding and writing need to know of a book. Indices count living lines from 0.
 * The book implements it; formulas know nothing else of books.
 */
export interface Layout {
  /** Without regard to case. */
  idOfSheet(name: string): Id | undefined;
  /** `undefined` when the sheet is gone. */
  nameOfSheet(sheet: Id): string | undefined;
  /** Whether the index lies within the limits of a sheet, in use or not. */
  has(sheet: Id, axis: AxisName, index: number): boolean;
  /** `undefined` beyond the limits of a sheet. May mint the line when it does not exist yet. */
  lineAt(sheet: Id, axis: AxisName, index: number): Id | undefined;
  /** -1 when the line is gone. */
  indexOf(sheet: Id, axis: AxisName, line: Id): number;
  /** Index of the line, or of the nearest living one after it (`from`) or before it (`to`). */
  nearest(sheet: Id, axis: AxisName, line: Id, end: 'from' | 'to'): number;
  /** How the name is spelled where it is defined; `undefined` when it is not. */
  spellingOf(name: string): string | undefined;
}

export type AxisName = 'rows' | 'columns';
