import type { AnyDefinition } from '../../functions/define.ts';
import type { Spectra } from '../../functions/spectrum/spectra.ts';
import type { Fixtures } from '../../functions/fixture/fixture.ts';
import type { QuantityName } from '../../functions/quantities/names.ts';
import type { FunctionError } from '../../functions/values.ts';
import type { Spot } from '../book/look.ts';
import type { Document } from '../book/types.ts';

/** A cell by the id of its sheet and its position there now, counted from 0. */
export type CellPlace = Spot;

/** A block of cells of one sheet, both corners included. Whole columns end at the last row. */
export interface CellBlock {
  readonly sheet: string;
  readonly from: { readonly row: number; readonly column: number };
  readonly to: { readonly row: number; readonly column: number };
}

/** What a cell holds once calculated, numbers in base units. `null` is an empty cell. */
export type CellValue = number | string | boolean | FunctionError | null;

/** A formula worked out without being in a cell. */
export interface Result {
  readonly value: CellValue;
  /** What the value measures, as far as the formula tells. */
  readonly quantity: QuantityName | undefined;
  /** Quiet notes that refuse nothing: a meter constant outside what the standard recommends. */
  readonly remarks: readonly string[];
}

/** One argument of a function, with what it came to. */
export interface ExplainedArgument {
  /** The parameter's name; for ordinary spreadsheet functions its number. */
  readonly name: string;
  readonly quantity: QuantityName | undefined;
  /** As written in the formula: `B2`, `"250 fc"`, `B2:B9`. Empty when left out. */
  readonly text: string;
  /** The single value; undefined for a range of more than one cell and for what was left out. */
  readonly value: CellValue | undefined;
  /** Where the argument points, when it is a reference. */
  readonly block?: CellBlock;
  /** Left out: the value is the parameter's default, or undefined if it has none. */
  readonly leftOut?: true;
}

/** Why a cell is what it is. */
export interface Explanation {
  readonly value: CellValue;
  readonly quantity: QuantityName | undefined;
  /** The outermost function of the library in the cell's formula. */
  readonly call?: {
    readonly definition: AnyDefinition;
    readonly args: readonly ExplainedArgument[];
  };
  /** What the formula reads, in the order in which it is written, each block once. */
  readonly precedents: readonly CellBlock[];
  /** Cells whose formulas read this one, in sheet order. */
  readonly dependents: readonly CellPlace[];
  readonly remarks: readonly string[];
}

/** What changed in one recalculation. `all`: so much that every visible cell should be drawn anew. */
export interface Recalculated {
  readonly all: boolean;
  /** Cells with another value, or that measure something else. */
  readonly cells: readonly CellPlace[];
  /** Cells that were touched in what they measure, and those that read them: to be checked anew; none if left out. */
  readonly reread?: readonly CellPlace[] | 'all';
}

/** Calculates a book and follows its transactions. It never changes the book. */
export interface Engine {
  valueOf(place: CellPlace): CellValue;
  /** The cell's own quantity, else its column's, else what its formula comes to. */
  quantityOf(place: CellPlace): QuantityName | undefined;
  explain(place: CellPlace): Explanation;
  /**
   * Works out a formula that is not in a cell, with or without its leading `=`. Bare references mean
   * cells of `sheet` (an id; the first sheet if none is given). Never throws.
   */
  evaluate(formula: string, sheet?: string): Result;
  /** Calls after each recalculation. Returns how to stop listening. */
  listen(heard: (recalculated: Recalculated) => void): () => void;
  dispose(): void;
}

/** What the engine needs of the world; all else stands in the book. */
export interface EngineOptions {
  /** Wall-clock time, for TODAY and NOW. Without it these two are unknown functions. */
  readonly clock?: () => Date;
  /** A number from 0 up to 1, for RAND and its like. Without it these are unknown functions. */
  readonly chance?: () => number;
  /** The fixtures on a book’s shelf, read; asked for again after each change of the shelf. */
  readonly fixtures?: (document: Document) => Fixtures;
  /** The spectra on a book’s shelf, likewise. */
  readonly spectra?: (document: Document) => Spectra;
}
