import { paste, take } from '../commands/clipboard.ts';
import type { Outcome } from '../commands/command.ts';
import type { Action } from './actions.ts';
import type { withOpenBook } from './with-desk.ts';
import { pasteOrTakeIn } from '../walk/commands.ts';
import { words } from '../words/words.ts';

/** Cut, copy and paste by the clipboard of the system. */
export function clipboardActions({
  unavailable: needsBook,
  withDesk,
}: ReturnType<typeof withOpenBook>): readonly Action[] {
  const write = (how: 'copy' | 'cut') =>
    withDesk(async ({ context }) => {
      await navigator.clipboard.writeText(take(context, how));
      return { ok: true };
    });
  const read = (what: 'all' | 'values') =>
    withDesk(async ({ context }): Promise<Outcome> => {
      try {
        const text = await navigator.clipboard.readText();
        return what === 'all' ? pasteOrTakeIn(context, text) : paste(context, text, what);
      } catch {
        return {
          ok: false,
          reason: words.app.clipboard,
        };
      }
    });
  const action = (id: string, name: string, keys: string, run: Action['run']): Action => ({
    id,
    name,
    group: 'edit',
    keys: [keys],
    native: true,
    unavailable: needsBook,
    run,
  });
  return [
    action('edit.cut', words.app.cut, 'Ctrl+X', write('cut')),
    action('edit.copy', words.app.copy, 'Ctrl+C', write('copy')),
    action('edit.paste', words.app.paste, 'Ctrl+V', read('all')),
    {
      ...action('edit.pasteValues', words.app.pasteValues, 'Ctrl+Shift+V', read('values')),
      native: false,
    },
  ];
}
