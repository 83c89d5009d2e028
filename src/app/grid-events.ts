import { take } from '../commands/clipboard.ts';
import type { Outcome } from '../commands/command.ts';
import type { GridEvents, GridView, Range } from '../grid/index.ts';
import { valuesBeside } from '../files/htmlTable.ts';
import { fixAtCaret } from '../formula/fix.ts';
import { writeSheetPrefix } from '../formula/sheetprefix.ts';
import type { EntryLine } from '../panels/frame.ts';
import type { MenuOn } from '../panels/page/cell-menu.ts';
import { blockAddress } from '../panels/views/address.ts';
import { pasteOrTakeIn } from '../walk/commands.ts';
import { nextReading } from '../walk/next-reading.ts';
import type { Action } from './actions.ts';
import { words } from '../words/words.ts';
import type { Desk } from './desk.ts';
import type { KeyMap } from './keys.ts';

export interface GridEars {
  readonly desk: Desk;
  readonly keys: KeyMap;
  /** Runs a command and says nothing about it. */
  act(id: string, args?: unknown): Outcome;
  /** Says how something ended, where there is something to say. */
  tell(outcome: Outcome): void;
  choose(action: Action): void;
  menu(on: MenuOn, x: number, y: number): void;
  view(): GridView | undefined;
  /** Tab and Enter go through the readings only. */
  readingsOnly(): boolean;
  readonly line: EntryLine;
  /** Positions of the rows that are out of view. */
  leftOut(): readonly number[];
}

/** A place in a formula where a reference may stand. */
const awaitsReference = /[=(,;+\-*/^&<>:]\s*$/;

/** What the hand does in the grid becomes commands on the desk. */
export function gridEvents(ears: GridEars): GridEvents {
  const { act, tell } = ears;
  const { session, context } = ears.desk;
  let pointed = '';
  const put = (event: ClipboardEvent, how: 'copy' | 'cut') =>
    event.clipboardData?.setData('text/plain', take(context, how));

  /** As it is written in a formula on this sheet. */
  const referenceTo = ({ from, to }: Range, home: string): string => {
    const { sheet } = session.state;
    const name = ears.desk.book.document.sheet(sheet)?.properties.name ?? '';
    return (sheet === home ? '' : writeSheetPrefix(name)) + blockAddress(from, to, 'cells');
  };
  /** The next `$` in the reference at the caret of the cell's editor. */
  const fixed = (event: KeyboardEvent): boolean => {
    const view = ears.view();
    const { entry } = session.state;
    if (event.key !== 'F4' || event.ctrlKey || event.altKey || event.metaKey) return false;
    const next = view && entry && fixAtCaret(entry.text, view.editorCaret);
    if (!next) return false;
    view.setEditorText(next.text, next.caret);
    session.type({ ...entry, text: next.text });
    return true;
  };

  /** Whether rows out of view stand in the way of what is done to whole blocks. */
  const hides = (first: number, last: number): boolean =>
    ears.leftOut().some((row) => row >= first && row <= last);
  const refuse = () => tell({ ok: false, reason: words.filter.between });
  /** A block that is pasted comes down on the rows below. */
  const hidesBelow = (lines: number): boolean => {
    const { from } = session.state.selection.ranges.at(-1) ?? { from: { row: 0 } };
    return hides(from.row, from.row + lines - 1);
  };
  const isWhole = () => session.state.selection.ranges.some(({ kind }) => /columns|all/.test(kind));

  return {
    selected: (selection) => session.select(selection),
    edit(spot, text) {
      const outcome = act('cells.type', { spot, text });
      if (!outcome.ok) return { reason: outcome.reason };
      tell(outcome);
      return true;
    },
    editing(spot, text) {
      pointed = '';
      session.type(spot ? { sheet: session.state.sheet, spot, text } : null);
    },
    clear: () => (isWhole() && hides(0, Infinity) ? refuse() : tell(act('cells.clear'))),
    fill: (from, to) =>
      hides(to.from.row, to.to.row) ? refuse() : tell(act('edit.fill', { from, to })),
    resizeColumn: (column, width) => tell(act('columns.width', { column, width })),
    moveLines({ kind, from, to: last }, to) {
      if (kind === 'rows' && hides(0, Infinity)) return refuse();
      const axis = kind === 'rows' ? 'row' : 'column';
      tell(act(`${axis}s.moveTo`, { from: from[axis], last: last[axis], to }));
    },
    copy: (event) => put(event, 'copy'),
    cut: (event) => (hides(0, Infinity) ? refuse() : put(event, 'cut')),
    paste(event) {
      const given = (type: string) => event.clipboardData?.getData(type) ?? '';
      const text = given('text/plain');
      const lines = text.replace(/\r?\n$/, '').split('\n').length;
      if (lines > 1 && hidesBelow(lines)) return refuse();
      tell(pasteOrTakeIn(context, text, valuesBeside(given('text/html'), text)));
    },
    menu: ({ on, x, y }) => ears.menu(on, x, y),
    key(event, editing) {
      if (editing && (ears.line.suggest(event) || fixed(event))) return true;
      const action = ears.keys.actionFor(event, editing ? 'typing' : 'grid');
      if (!action) return false;
      ears.choose(action);
      return true;
    },
    next(from, move) {
      if (!ears.readingsOnly()) return undefined;
      const back = move === 'left' || move === 'up';
      return nextReading(ears.desk.book.document, session.state.sheet, from, back);
    },
    point(range, again) {
      const { entry } = session.state;
      if (!entry) return false;
      const { line } = ears;
      const view = ears.view();
      const inCell = view !== undefined && view.editorText !== null;
      const before = entry.text.slice(0, inCell ? view.editorCaret : line.caret);
      const instead = again || (pointed !== '' && before.endsWith(pointed));
      if (!before.startsWith('=') || !(instead || awaitsReference.test(before)))
        return !inCell && !line.end();
      const reference = referenceTo(range, entry.sheet);
      const replaced = instead ? pointed.length : 0;
      if (inCell) view.insertInEditor(reference, replaced);
      else line.insert(reference, replaced);
      pointed = reference;
      return true;
    },
  };
}
