import type { QuantityName } from './quantities/names.ts';

declare const kind: unique symbol;

/**
 * A number that says what it measures: `In<'illuminance'>` is in lux, `In<'length'>` in metres.
 * Plain numbers fit anywhere (arithmetic gives plain numbers); one quantity never fits another.
 */
export type In<Quantity extends string> = number & { readonly [kind]?: Quantity };

export type ErrorCode =
  '#N/A' | '#NUM!' | '#VALUE!' | '#DIV/0!' | '#REF!' | '#NAME?' | '#CYCLE!' | '#ERROR!';

/** What a cell shows instead of a value. The message is a sentence for people. */
export interface FunctionError {
  readonly code: ErrorCode;
  readonly message: string;
  /** A reading is still missing: shown as a quiet dash. */
  readonly waiting?: true;
  /** Zero light where a logarithm wants some: shown as these quiet words. */
  readonly quiet?: true;
}

/** A reference to an empty cell: a reading that is still missing. `at` names the cell for people. */
export interface Blank {
  readonly blank: true;
  readonly at?: string;
}

/** One cell of a range handed to a function, with its address for messages. */
export interface RangeCell {
  readonly value: number | string | boolean | Blank | FunctionError | Measured;
  readonly at?: string;
}

export interface RangeArgument {
  readonly cells: readonly RangeCell[];
  /** Cells in a row of the range, where the shape matters. */
  readonly width?: number;
}

/** One cell of a table: what stands in it, undefined where it is blank, and its address for messages. */
export interface TableCell {
  readonly value: Value | undefined;
  readonly at?: string;
}

export type TableRow = readonly TableCell[];

/**
 * A number together with what it measures, for parameters that take readings of several kinds:
 * a cell that knows what it measures hands this over, as does a text with a unit.
 */
export interface Measured {
  readonly measured: QuantityName;
  readonly value: number;
}

/** What a formula may hand to a function. `undefined` is an argument that was left out. */
export type Argument =
  number | string | boolean | undefined | Blank | FunctionError | RangeArgument | Measured;

export type Value = number | string | boolean;

export const blank: Blank = { blank: true };

export function isError(value: unknown): value is FunctionError {
  return typeof value === 'object' && value !== null && 'code' in value;
}

export function isBlank(value: unknown): value is Blank {
  return typeof value === 'object' && value !== null && 'blank' in value;
}

export function isMeasured(value: unknown): value is Measured {
  return typeof value === 'object' && value !== null && 'measured' in value;
}

export function isRange(value: unknown): value is RangeArgument {
  return typeof value === 'object' && value !== null && 'cells' in value;
}

/** A result that cannot be: `run` returns this, it never throws. */
export function refuse(message: string, code: ErrorCode = '#NUM!'): FunctionError {
  return { code, message };
}

/** Zero light where a logarithm or a division wants some: shown as quiet words. */
export function noLight(at: string): FunctionError {
  return { code: '#NUM!', message: `no light at ${at}`, quiet: true };
}
