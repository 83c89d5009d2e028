import type { Outcome } from '../commands/command.ts';
import type { Theme } from '../panels/screen.ts';
import type { Action } from './actions.ts';
import type { AppHands } from './app-hands.ts';
import { words } from '../words/words.ts';

const ok: Outcome = { ok: true };

const themes: readonly (readonly [Theme, string])[] = [
  ['system', words.app.themeSystem],
  ['dark', words.app.themeDark],
  ['light', words.app.themeLight],
  ['metering', words.app.themeMetering],
];

/** What this screen shows: panels, pages, themes, the readings one by one. */
export function viewActions(
  hands: Pick<AppHands, 'find' | 'screen' | 'walk'>,
  needsBook: () => string | undefined,
): readonly Action[] {
  return [
    {
      id: 'view.find',
      name: words.app.findCommand,
      group: 'view',
      keys: ['Ctrl+K'],
      run: () => (hands.find(), ok),
    },
    {
      id: 'view.functions',
      name: words.app.reference,
      group: 'view',
      keys: ['F1'],
      search: ['help', 'formula', 'equation', 'functions', 'how'],
      run: () => ok,
    },
    {
      id: 'view.keyboard',
      name: words.app.keyboard,
      group: 'view',
      keys: ['Shift+F1'],
      search: ['keys', 'help'],
      run: () => ok,
    },
    {
      id: 'view.remarks',
      name: words.app.remarks,
      group: 'view',
      keys: ['F7'],
      search: ['unit check', 'mistakes', 'marks', 'what does not go together'],
      unavailable: needsBook,
      run: () => ok,
    },
    { id: 'view.about', name: words.app.about, group: 'view', search: ['licence'], run: () => ok },
    {
      id: 'view.contents',
      name: words.app.toggleContents,
      group: 'view',
      run: () => (hands.screen.toggle('contents'), ok),
    },
    {
      id: 'view.slip',
      name: words.app.toggleSlip,
      group: 'view',
      run: () => (hands.screen.toggle('slip'), ok),
    },
    {
      id: 'walk.start',
      name: words.app.walk,
      group: 'book',
      keys: ['F8'],
      search: ['meter', 'point', 'phone', 'one by one'],
      unavailable: needsBook,
      run: () => hands.walk(),
    },
    {
      id: 'view.readingsOnly',
      name: words.app.readingsOnly,
      group: 'view',
      search: ['tab', 'enter', 'next reading', 'skip', 'walk order', 'keys'],
      run() {
        const { readingsOnly } = hands.screen;
        readingsOnly.value = !readingsOnly.value;
        const say = readingsOnly.value ? words.app.readingsOnlyNow : words.app.everyCellNow;
        return { ok: true, say };
      },
    },
    ...themes.map(([theme, name]): Action => ({
      id: `view.theme.${theme}`,
      name,
      group: 'view',
      search: ['theme', 'night', 'colours'],
      run: () => ((hands.screen.theme.value = theme), ok),
    })),
  ];
}
