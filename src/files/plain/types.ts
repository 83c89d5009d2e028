/** A book as every spreadsheet program knows one: what goes out and what comes in. */

/** How a number is written: what stands around it and how many digits follow the decimal sign. */
export interface NumberLook {
  /** Digits after the decimal sign; as many as the number has where it is left out. */
  readonly decimals?: number;
  readonly before?: string;
  readonly after?: string;
  readonly percent?: true;
  /** A plus before what is above zero. */
  readonly signed?: true;
  readonly thousands?: true;
  readonly moment?: 'date' | 'time' | 'dateTime';
  /** An engraved mark: this number alone reads as this text. */
  readonly mark?: { readonly value: number; readonly text: string };
}

/** An error as other programs name it. */
export interface PlainError {
  readonly error: string;
}

export type PlainValue = number | string | boolean | PlainError | null;

export interface PlainCell {
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
  /** What the formula came to, where there is one. */
  readonly value: PlainValue;
  /** In A1 form with its `=`, commas between arguments, functions by their bare names. */
  readonly formula?: string;
  readonly look?: NumberLook;
  readonly note?: string;
  /** May be typed in while the sheet is protected. */
  readonly unlocked?: true;
  /** A formula that waits for a reading: other programs show nothing there. */
  readonly waits?: true;
  readonly bold?: true;
  readonly italic?: true;
  readonly align?: 'left' | 'centre' | 'right';
  readonly wrap?: true;
}

export interface PlainSheet {
  readonly name: string;
  readonly hidden?: true;
  /** Locked cells refuse typing. No password: whoever wants to may lift it. */
  readonly protected?: true;
  /** Widths of columns in pixels, by their index. */
  readonly widths: ReadonlyMap<number, number>;
  readonly frozenRows: number;
  readonly frozenColumns: number;
  readonly cells: readonly PlainCell[];
}

export interface PlainName {
  readonly name: string;
  /** With its `=`; every reference names its sheet. */
  readonly formula: string;
}

export interface PlainBook {
  readonly title: string;
  readonly sheets: readonly PlainSheet[];
  readonly names: readonly PlainName[];
}

export const isPlainError = (value: PlainValue): value is PlainError =>
  typeof value === 'object' && value !== null;
