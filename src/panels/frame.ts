/** Dialogs by what they are about. */
export type DialogName =
  | 'replace'
  | 'filter'
  | 'quantity'
  | 'target'
  | 'settings'
  | 'remarks'
  | 'names'
  | 'format'
  | 'sheet'
  | 'add-sheet'
  | 'figure'
  | 'fixtures'
  | 'spectra'
  | 'keyboard'
  | 'versions'
  | 'keep-version'
  | 'bin'
  | 'about'
  | 'function';

/** The entry line, as those use it who write into it from elsewhere. */
export interface EntryLine {
  /** A key pressed while a cell is being typed in: true if the suggestions took it. */
  suggest(event: KeyboardEvent): boolean;
  readonly caret: number;
  /** Puts text at the caret in place of as many characters before it. */
  insert(text: string, replace: number): void;
  /** Goes on typing here, at the caret or where it is said to be. */
  focus(caret?: number): void;
  /** Ends the entry where it is; false if it was refused, which it says. */
  end(): boolean;
}

/** What panels ask of the frame around them. */
export interface Shell {
  /** An empty element for the grid, sized by the layout. */
  readonly grid: HTMLElement;
  find(): void;
  /** Unfolds the figures of the sheet and moves the focus there; false if it has none. */
  figures(): boolean;
  open(dialog: DialogName, about?: string): void;
  /** Runs a command, by way of the dialog that asks for what it needs. */
  choose(id: string): void;
  readonly entry: EntryLine;
  /** Keys as this machine's keyboard writes them. */
  keys(keys: string): string;
}
