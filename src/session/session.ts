/** A cell by position in the sheet that is shown, counted from 0. */
export interface Spot {
  readonly row: number;
  readonly column: number;
}

/** A block of cells, both corners included; `from` is its top left. */
export interface Block {
  readonly from: Spot;
  readonly to: Spot;
}

export type BlockKind = 'cells' | 'rows' | 'columns' | 'all';

export interface SelectedBlock extends Block {
  readonly kind: BlockKind;
}

/** `focus` takes the typing; `anchor` is the fixed corner of the last block, `lead` the moving one. */
export interface SheetSelection {
  readonly focus: Spot;
  readonly anchor: Spot;
  readonly lead: Spot;
  readonly ranges: readonly [SelectedBlock, ...SelectedBlock[]];
}

/** What was copied or cut last, so that a paste inside the app keeps formulas, formats and roles. */
export interface Clip {
  /** The plain text put on the clipboard with it: a paste with another text is from elsewhere. */
  readonly text: string;
  readonly sheet: string;
  readonly block: Block;
  readonly how: 'copy' | 'cut';
}

/** What is being typed, and the cell it is for: while it points elsewhere, on a sheet not in view. */
export interface EntryInProgress {
  readonly sheet: string;
  readonly spot: Spot;
  readonly text: string;
}

export interface SessionState {
  /** Id of the sheet in view. */
  readonly sheet: string;
  readonly selection: SheetSelection;
  /** Where each sheet was left, so that coming back finds the same cell. */
  readonly left: ReadonlyMap<string, SheetSelection>;
  /** The entry being typed, wherever it is typed; null when none is. */
  readonly entry: EntryInProgress | null;
  readonly clip: Clip | null;
}

/**
 * What this screen shows and holds and no other does: sheet in view, selection, the entry in
 * progress. Not part of the book and not of its history.
 */
export interface Session {
  readonly state: SessionState;
  /** An entry in progress goes on: a formula points to other sheets. */
  show(sheet: string): void;
  select(selection: SheetSelection): void;
  selectBlock(block: Block, kind?: BlockKind): void;
  type(entry: SessionState['entry']): void;
  hold(clip: Clip | null): void;
  /** Hears each change; returns the way to stop hearing. */
  listen(listener: (state: SessionState) => void): () => void;
}

export function at(row: number, column: number): SheetSelection {
  const spot = { row, column };
  return {
    focus: spot,
    anchor: spot,
    lead: spot,
    ranges: [{ from: spot, to: spot, kind: 'cells' }],
  };
}

export function over(block: Block, kind: BlockKind = 'cells'): SheetSelection {
  return {
    focus: block.from,
    anchor: block.from,
    lead: block.to,
    ranges: [{ ...block, kind }],
  };
}

export function createSession(firstSheet: string): Session {
  let state: SessionState = {
    sheet: firstSheet,
    selection: at(0, 0),
    left: new Map(),
    entry: null,
    clip: null,
  };
  const listeners = new Set<(state: SessionState) => void>();
  const change = (part: Partial<SessionState>): void => {
    state = { ...state, ...part };
    for (const listener of listeners) listener(state);
  };
  return {
    get state() {
      return state;
    },
    show(sheet) {
      if (sheet === state.sheet) return;
      const left = new Map(state.left).set(state.sheet, state.selection);
      change({ sheet, left, selection: left.get(sheet) ?? at(0, 0) });
    },
    select: (selection) => change({ selection }),
    selectBlock: (block, kind) => change({ selection: over(block, kind) }),
    type: (entry) => change({ entry }),
    hold: (clip) => change({ clip }),
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
