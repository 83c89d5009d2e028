import { rowsLeftOut } from '../commands/filtered.ts';
import {
  createGrid,
  seenRows,
  type GridEvents,
  type GridView,
  type Move,
  type Place,
} from '../grid/index.ts';
import { at } from '../session/session.ts';
import type { Desk } from './desk.ts';
import { gridModel } from './grid-model.ts';
import { narrowBelow } from './widths.ts';

/** The grid as the rest of app holds it: it follows the session, and the session follows it. */
export interface GridHand {
  readonly view: GridView;
  /** Positions of the rows that a filter leaves out of view, from the top. */
  leftOut(): readonly number[];
  /** Shows the sheet and the selection of the session. */
  follow(): void;
  focus(): void;
  /** The entry line types; an open editor in the cell follows. */
  setText(text: string): void;
  /** An entry made elsewhere is finished: on to the next cell. */
  leave(spot: Place, then: Move): void;
  /** Closes an open editor without keeping what is in it. */
  drop(): void;
  dispose(): void;
}

const steps: Readonly<Record<Move, readonly [rows: number, columns: number]>> = {
  stay: [0, 0],
  down: [1, 0],
  up: [-1, 0],
  right: [0, 1],
  left: [0, -1],
};

/** `typeOn` gives the focus to the entry line, for an entry that goes on while another sheet is in view. */
export async function createHand(
  host: HTMLElement,
  desk: Desk,
  events: GridEvents,
  typeOn: (caret?: number) => void,
): Promise<GridHand> {
  const { session } = desk;
  const model = gridModel(desk, () => host.clientWidth);
  let sheet = session.state.sheet;
  let following = false;
  const find = () =>
    rowsLeftOut({ document: desk.book.document, engine: desk.engine }, session.state.sheet);
  let leftOut = find();
  /** Whether other rows are in view than before. */
  const refilter = (): boolean => {
    const found = find();
    if (found.join() === leftOut.join()) return false;
    leftOut = found;
    return true;
  };
  const heard: GridEvents = {
    ...events,
    selected(selection, origin) {
      if (!following) events.selected(selection, origin);
    },
    editing(place, text) {
      if (!following) events.editing?.(place, text);
    },
  };
  const view = await createGrid(host, model, heard, 'sheet', () => leftOut);

  const follow = (): void => {
    following = true;
    const another = sheet !== session.state.sheet;
    if (another) {
      sheet = session.state.sheet;
      const caret = view.editorText === null ? undefined : view.editorCaret;
      view.closeEditor('drop');
      refilter();
      view.refresh();
      // It begins where it begins, and not where the sheet before was scrolled to.
      view.scrollTo({ row: model.frozen.rows, column: model.frozen.columns });
      if (session.state.entry) typeOn(caret);
    }
    if (another || JSON.stringify(view.selection) !== JSON.stringify(session.state.selection))
      view.select(session.state.selection);
    following = false;
  };

  desk.onPaint(({ cells, all, structure }) => {
    const { entry } = session.state;
    if (entry && !desk.book.document.sheet(entry.sheet)) session.type(null);
    if (sheet === session.state.sheet && refilter()) view.refresh();
    else if (structure) view.refresh();
    else if (all) view.paint();
    else view.paint(cells.filter((cell) => cell.sheet === session.state.sheet));
    follow();
  });
  follow();
  let wide = host.clientWidth;
  const resized = new ResizeObserver(() => {
    const was = wide;
    wide = host.clientWidth;
    if (was !== wide && Math.min(was, wide) < narrowBelow) view.refresh();
  });
  resized.observe(host);

  return {
    view,
    leftOut: () => leftOut,
    follow,
    focus: () => view.focus(),
    setText: (text) => {
      if (view.editorText !== null) view.setEditorText(text);
    },
    leave(spot, then) {
      if (view.editorText !== null) view.closeEditor('drop');
      const [rows, columns] = steps[then];
      const next = then === 'stay' ? undefined : events.next?.(spot, then);
      const seen = seenRows(leftOut);
      const below = seen.onSheet(Math.max(0, seen.inView(spot.row) + rows));
      const to = next ?? { row: below, column: spot.column + columns };
      const row = Math.max(0, Math.min(model.rowCount - 1, to.row));
      const column = Math.max(0, Math.min(model.columnCount - 1, to.column));
      session.select(at(row, column));
      follow();
      view.focus();
    },
    drop: () => {
      if (view.editorText !== null) view.closeEditor('drop');
    },
    dispose() {
      resized.disconnect();
      view.dispose();
    },
  };
}
