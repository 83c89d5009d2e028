import { namesOf, onMac } from '../panels/kit/keys.ts';
import type { Action } from './actions.ts';

/** Keys that mean the same while something is being typed; all others belong to the typing. */
const always: ReadonlySet<string> = new Set([
  'view.find',
  'view.functions',
  'view.keyboard',
  'book.saveFile',
  'book.open',
  'book.print',
  'edit.find',
  'sheet.next',
  'sheet.previous',
]);

export interface KeyMap {
  /** The action of a key press in this situation; undefined if the key is nobody’s. */
  actionFor(event: KeyboardEvent, where: Where): Action | undefined;
}

/** In the grid every key counts; elsewhere only those with Ctrl, Alt or a function key. */
export type Where = 'grid' | 'typing' | 'elsewhere';

export function createKeyMap(actions: readonly Action[]): KeyMap {
  const byKeys = new Map(
    actions
      .filter(({ native }) => !native)
      .flatMap((action) => (action.keys ?? []).map((keys) => [keys, action] as const)),
  );
  const mac = onMac();
  return {
    actionFor(event, where) {
      if (event.isComposing) return undefined;
      const names = namesOf(event, mac);
      const keys = names.find((name) => byKeys.has(name)) ?? '';
      const action = byKeys.get(keys);
      if (!action) return undefined;
      if (where === 'typing') return always.has(action.id) ? action : undefined;
      const withHelp = /^(?:Ctrl|Alt)\+|^(?:Shift\+)?F\d+$/.test(keys);
      return where === 'grid' || withHelp ? action : undefined;
    },
  };
}

/** Whether keys go into a text. */
export function isTyping(target: EventTarget | null): boolean {
  return (
    target instanceof HTMLElement &&
    target.closest(
      'input:not([type=radio], [type=checkbox]), textarea, select, dialog, [popover]',
    ) !== null
  );
}
