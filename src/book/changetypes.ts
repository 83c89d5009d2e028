import type { AxisName, Id } from '../formula/types.ts';
import type { Step, Transaction } from './steptypes.ts';
import type { Document, Refusal, Settings, ShelfName } from './documenttypes.ts';

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
  readonly kind: 'do' | 'follow' | 'undo' | 'redo';
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
  /**
   * Does what follows by itself from the last transaction, as a part of it: one undo takes both back.
   * What was taken back before can still be done again.
   */
  follow(steps: readonly Step[]): { readonly ok: true; readonly change: Change | null } | Refusal;
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
