/** A key press as commands write it: `Ctrl+Shift+Z`. `Ctrl` is Cmd on a Mac. */
export interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

const spoken: Readonly<Record<string, string>> = { ' ': 'Space', '+': 'Plus' };

/** Keys whose letter already tells that Shift was held: `?`, `:`, `%`. */
const isSign = (key: string) => key.length === 1 && !/[a-z0-9]/i.test(key);

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
  Escape: 'Esc',
  PageUp: 'Page up',
  PageDown: 'Page down',
};

/** As it is printed beside a command. */
export function writtenKeys(keys: string, mac = false): string {
  return keys
    .split('+')
    .map((key) => (mac && macSigns[key]) || signs[key] || key)
    .join(mac ? '' : ' ');
}

export const onMac = (): boolean => /Mac|iPhone|iPad/.test(navigator.userAgent);
