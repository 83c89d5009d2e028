import { words } from '../../words/words.ts';

/** A key press as commands write it: `Ctrl+Shift+Z`. `Ctrl` is Cmd on a Mac. */
export interface Pressed {
  readonly key: string;
  /** Where the key sits: `Period`. With Shift, `key` is what Shift makes of it. */
  readonly code?: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const spoken: Readonly<Record<string, string>> = { ' ': 'Space', '+': 'Plus' };

/** Keys whose letter already tells that Shift was held: `?`, `:`, `%`. */
const isSign = (key: string) => key.length === 1 && !/[a-z0-9 ]/i.test(key);

const unshifted: Readonly<Record<string, string>> = {
  Period: '.',
  Comma: ',',
  Equal: '=',
  Minus: '-',
};

/** The names a press may go by: as the sign that Shift makes, and as Shift and the key itself. */
export function namesOf(pressed: Pressed, mac = false): readonly string[] {
  const sign = pressed.shiftKey ? unshifted[pressed.code ?? ''] : undefined;
  const plain =
    sign === undefined ? undefined : nameOf({ ...pressed, key: sign, shiftKey: false }, mac);
  return [nameOf(pressed, mac), ...(plain ? [withShift(plain)] : [])];
}

/** `Shift` stands right before the key. */
function withShift(name: string): string {
  const parts = name.split('+');
  return [...parts.slice(0, -1), 'Shift', parts.at(-1)].join('+');
}

export function nameOf(pressed: Pressed, mac = false): string {
  const key = spoken[pressed.key] ?? pressed.key;
  const named = key.length === 1 ? key.toUpperCase() : key;
  return [
    (mac ? pressed.metaKey : pressed.ctrlKey) && 'Ctrl',
    pressed.altKey && 'Alt',
    pressed.shiftKey && !isSign(pressed.key) && 'Shift',
    named,
  ]
    .filter(Boolean)
    .join('+');
}

const macSigns: Readonly<Record<string, string>> = { Ctrl: '⌘', Alt: '⌥', Shift: '⇧' };
const signs: Readonly<Record<string, string>> = {
  ArrowUp: '↑',
  ArrowDown: '↓',
  ArrowLeft: '←',
  ArrowRight: '→',
  Escape: words.keyboard.escape,
  PageUp: words.keyboard.pageUp,
  PageDown: words.keyboard.pageDown,
};

/** As it is printed beside a command. */
export function writtenKeys(keys: string, mac = false): string {
  return keys
    .split('+')
    .map((key) => (mac && macSigns[key]) || signs[key] || key)
    .join(mac ? '' : ' ');
}

export const onMac = (): boolean => /Mac|iPhone|iPad/.test(navigator.userAgent);
