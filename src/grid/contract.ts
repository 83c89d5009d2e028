/**
 * What a grid is to the rest of the house: a painter of cells and a source of gestures. It keeps no
 * values, changes no book and knows no formula. Any adapter that passes
 * tests/browser/grid-contract.test.ts may stand behind these types.
 */

/** A cell by position, counted from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

/** A block of cells, both corners included; `from` is its top left. */
export interface Range {
  readonly from: Place;
  readonly to: Place;
}

/** What a range was meant as: whole rows stay whole when the sheet grows. */
export type RangeKind = 'cells' | 'rows' | 'columns' | 'all';

export interface SelectedRange extends Range {
  readonly kind: RangeKind;
}

/**
 * `focus` is the cell that typing goes to; `anchor` is the fixed corner of the last range and `lead`
 * the one that Shift moves. `ranges` is never empty; several come from Ctrl, the last one is live.
 */
export interface Selection {
  readonly focus: Place;
  readonly anchor: Place;
  readonly lead: Place;
  readonly ranges: readonly [SelectedRange, ...SelectedRange[]];
}

export type Origin = 'mouse' | 'keyboard' | 'touch' | 'program';

/** Where the selection goes after an edit. */
export type Move = 'stay' | 'down' | 'up' | 'right' | 'left';

/** What a cell is for; drawn as a mark at its edge, never as colour alone. Without one: a result. */
export type CellRole = 'reading' | 'choice' | 'given' | 'answer';

/** Shape drawn before the words of a verdict; each differs in shape, colour only supports. */
export type VerdictShape = 'over' | 'under' | 'agrees' | 'waits' | 'clips';

/** How one cell looks now. A fresh object or a cached one: the grid does not keep it. */
export interface CellPicture {
  /** What is shown. Painted as text, whatever it contains. */
  readonly text: string;
  /** Small muted text behind the number: `stops`, `lx`. */
  readonly unit?: string;
  /** Default `left`. Numbers go right; thirds such as `1/3` in them are set as fractions. */
  readonly align?: 'left' | 'right' | 'centre';
  readonly bold?: boolean;
  readonly italic?: boolean;
  /** `heading`: a column caption or a section title inside the sheet. */
  readonly heading?: boolean;
  /** `waiting` is muted and quiet; `error` is coloured and carries a corner. */
  readonly state?: 'waiting' | 'error';
  readonly role?: CellRole;
  readonly verdict?: VerdictShape;
  /** The check has something to say about this cell: a dotted underline. */
  readonly remark?: boolean;
  /** A person left a note: a small corner at the upper right. */
  readonly note?: boolean;
  /** More for screen readers than is seen: the sentence of an error, of a waiting cell, a remark. */
  readonly described?: string;
}

/** What the grid asks, for visible cells only, each time it paints. Must be cheap and synchronous. */
export interface GridModel {
  readonly rowCount: number;
  readonly columnCount: number;
  /** How many first rows and columns stay in view. */
  readonly frozen: { readonly rows: number; readonly columns: number };
  /** CSS pixels. */
  columnWidth(column: number): number;
  rowLabel(row: number): string;
  columnLabel(column: number): string;
  cell(row: number, column: number): CellPicture;
  /** What was typed, as the editor shall show it; empty for a blank cell. */
  editText(row: number, column: number): string;
  /** The smallest block from A1 that holds everything written: where Ctrl+End goes. */
  used(): { readonly rows: number; readonly columns: number };
  /** Name of the sheet, read to screen readers as the name of the grid. */
  readonly name: string;
}

export type Verdict = true | { readonly reason: string };

/** Where a menu was asked for. `place` is the cell that is selected by then. */
export interface MenuRequest {
  readonly on: 'cell' | 'row' | 'column' | 'corner';
  readonly place: Place;
  /** Client coordinates of the pointer, or of the cell's lower left corner for the keyboard. */
  readonly x: number;
  readonly y: number;
}

/** What the host supplies. The grid changes nothing itself: each of these ends in a command. */
export interface GridEvents {
  selected(selection: Selection, origin: Origin): void;
  /**
   * An entry was finished. `true`: taken, the editor closes and the selection moves by `then`. A
   * reason: the editor stays open with what was typed and shows the sentence.
   */
  edit(place: Place, text: string, then: Move): Verdict;
  /** Asked before an editor opens; a reason is shown at the cell and nothing opens. */
  mayEdit?(place: Place): Verdict;
  /** Each change of the text being typed, so that the entry line can follow; null when it closed. */
  editing?(place: Place | null, text: string): void;
  /** Delete or Backspace on the selection. */
  clear(selection: Selection): void;
  /** The fill handle was dragged: `from` is to be continued over `to`, which contains it. */
  fill(from: Range, to: Range): void;
  /** A column's edge was dragged, `width` in CSS pixels. */
  resizeColumn(column: number, width: number): void;
  /**
   * The headings of selected rows or columns were dragged: `lines` go before the line that is at `to`
   * now. Without this, a drag from a heading always selects.
   */
  moveLines?(lines: SelectedRange, to: number): void;
  /** A column's edge was double clicked: as wide as its content. */
  fitColumn?(column: number): void;
  /** Clipboard events of the browser. The host fills or reads `clipboardData`; the grid prevents the default. */
  copy(event: ClipboardEvent, selection: Selection): void;
  cut(event: ClipboardEvent, selection: Selection): void;
  paste(event: ClipboardEvent, selection: Selection): void;
  /** Right click, long press, the ContextMenu key or Shift+F10. */
  menu(request: MenuRequest): void;
  /** Sees every key before the grid does; `true` means taken. `editing` tells whether an editor is open. */
  key(event: KeyboardEvent, editing: boolean): boolean;
  /** Escape with nothing to cancel: the next Tab leaves the grid. */
  escapeGrid?(): void;
  /**
   * A cell or block was pointed at. `true`: taken as a reference in an entry, be it in the open editor
   * (call `insertInEditor`) or in one of the host's own, and the entry goes on. Otherwise an open editor
   * is finished and the cell selected. Called again with `again` while the pointer drags the same
   * reference larger.
   */
  point?(range: Range, again: boolean): boolean;
  /** Where Enter and Tab go instead of to the neighbour, as in Walk order. */
  next?(from: Place, move: Move): Place | undefined;
  /** The visible block changed. */
  scrolled?(visible: Range): void;
}

/** Blocks drawn with an outline of their own: what was copied, what a formula refers to. */
export interface Outline {
  readonly range: Range;
  readonly as: 'copied' | 'reference';
}

export interface GridView {
  /** Repaints these cells as far as they are visible; without places, all that is visible. */
  paint(places?: Iterable<Place>): void;
  /** Structure changed: counts, widths, labels, frozen panes. Keeps selection and scroll as far as they still exist. */
  refresh(): void;
  readonly selection: Selection;
  /** Selects and scrolls there. Tells `selected` with origin `program`. */
  select(selection: Selection): void;
  /** Short for one cell or one block with its upper left as focus. */
  selectRange(range: Range, kind?: RangeKind): void;
  scrollTo(place: Place): void;
  outline(outlines: readonly Outline[]): void;
  /** Opens at `place` and selects it. Without a text, what was typed before, caret at the end. */
  openEditor(place: Place, initialText?: string): boolean;
  /** Finishes the entry through `edit` (`keep`, default) or drops it. False if the host refused. */
  closeEditor(how?: 'keep' | 'drop', then?: Move): boolean;
  /** The text in the open editor; null if none is open. */
  readonly editorText: string | null;
  /** Where the caret of the open editor is; 0 if none is open. */
  readonly editorCaret: number;
  /** The entry line types: the open editor follows, its caret at the end if not said. Does not call `editing`. */
  setEditorText(text: string, caret?: number): void;
  /** Puts text at the caret of the open editor, replacing `replace` characters before it. Calls `editing`. */
  insertInEditor(text: string, replace?: number): void;
  /** Shows a sentence at a cell (a refused command, say) until the next key or click. */
  say(place: Place, sentence: string): void;
  focus(): void;
  readonly hasFocus: boolean;
  /** The block now in view, frozen panes not counted. */
  visible(): Range;
  /** Client rectangle of a visible cell, for menus and pop-ups; null when out of view. */
  cellRect(place: Place): DOMRect | null;
  /** Rows 44 px high for fingers, or 31 px. Without a call it follows the pointer the device has. */
  setDensity(density: 'fine' | 'coarse'): void;
  dispose(): void;
}

/** `sheet`: virtual, for any size. `plain`: a real table, for reading, print and small sheets. */
export type GridKind = 'sheet' | 'plain';
