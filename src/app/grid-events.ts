import { take } from '../commands/clipboard.ts';
import type { Outcome } from '../commands/command.ts';
import type { GridEvents, GridView } from '../grid/index.ts';
import type { MenuOn } from '../panels/page/cell-menu.ts';
import { blockAddress } from '../panels/views/address.ts';
import { pasteOrTakeIn } from '../walk/commands.ts';
import type { Action } from './actions.ts';
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
  /** True if the suggestions under the entry line took the key. */
  suggest(event: KeyboardEvent): boolean;
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
      session.type(spot ? { spot, text } : null);
    },
    clear: () => tell(act('cells.clear')),
    fill: (from, to) => tell(act('edit.fill', { from, to })),
    resizeColumn: (column, width) => tell(act('columns.width', { column, width })),
    moveLines({ kind, from, to: last }, to) {
      const axis = kind === 'rows' ? 'row' : 'column';
      tell(act(`${axis}s.moveTo`, { from: from[axis], last: last[axis], to }));
    },
    copy: (event) => put(event, 'copy'),
    cut: (event) => put(event, 'cut'),
    paste: (event) =>
      tell(pasteOrTakeIn(context, event.clipboardData?.getData('text/plain') ?? '')),
    menu: ({ on, x, y }) => ears.menu(on, x, y),
    key(event, editing) {
      if (editing && ears.suggest(event)) return true;
      const action = ears.keys.actionFor(event, editing ? 'typing' : 'grid');
      if (!action) return false;
      ears.choose(action);
      return true;
    },
    point(range, again) {
      const view = ears.view();
      const text = view?.editorText ?? '';
      if (!view || !text.startsWith('=')) return false;
      if (!again && !awaitsReference.test(text)) return false;
      const reference = blockAddress(range.from, range.to, 'cells');
      view.insertInEditor(reference, again ? pointed.length : 0);
      pointed = reference;
      return true;
    },
  };
}
