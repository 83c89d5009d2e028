import { effect, signal } from './kit/signals.ts';

/** `metering`: dimmer than dark, for a screen beside a meter. */
export type Theme = 'system' | 'dark' | 'light' | 'metering';
export type Drawer = 'contents' | 'slip';

/** What this screen alone decides: its theme, its side panels and how keys go over its sheets. */
export interface Screen {
  readonly theme: { value: Theme };
  /** Tab and Enter go from reading to reading, in the order of Walk. */
  readonly readingsOnly: { value: boolean };
  /** Beside the page on a wide screen. */
  readonly beside: { value: Readonly<Record<Drawer, boolean>> };
  /** Slid over the page on a narrow one. */
  readonly drawer: { value: Drawer | null };
  /** Shows or hides a side panel, whichever way this width shows it. */
  toggle(drawer: Drawer): void;
  isOpen(drawer: Drawer): boolean;
}

const themeKey = 'halfstop-theme';
const readingsKey = 'halfstop-readings-only';
const besideKey = 'halfstop-beside';

/** Below these widths a panel slides over the page instead of standing beside it. */
const standing: Readonly<Record<Drawer, string>> = {
  contents: '(min-width: 760px)',
  slip: '(min-width: 1100px)',
};

const open = { contents: true, slip: true };

function read(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function write(key: string, value: string | null): void {
  try {
    if (value === null) localStorage.removeItem(key);
    else localStorage.setItem(key, value);
  } catch {
    // Storage is forbidden here: the choice lasts as long as the page.
  }
}

const chosen: readonly Theme[] = ['dark', 'light', 'metering'];

function asTheme(text: string | null): Theme {
  return chosen.find((theme) => theme === text) ?? 'system';
}

function asBeside(text: string | null): Record<Drawer, boolean> {
  const shut = (text ?? '').split(' ');
  return { contents: !shut.includes('contents'), slip: !shut.includes('slip') };
}

export function createScreen(root: HTMLElement = document.documentElement): Screen {
  const theme = signal<Theme>(asTheme(read(themeKey)));
  const readingsOnly = signal(read(readingsKey) !== null);
  const beside = signal<Readonly<Record<Drawer, boolean>>>(asBeside(read(besideKey)) ?? open);
  const drawer = signal<Drawer | null>(null);
  effect(() => {
    write(themeKey, theme.value === 'system' ? null : theme.value);
    if (theme.value === 'system') delete root.dataset['theme'];
    else root.dataset['theme'] = theme.value;
  });
  effect(() => {
    write(readingsKey, readingsOnly.value ? 'yes' : null);
    root.toggleAttribute('data-readings-only', readingsOnly.value);
  });
  effect(() => {
    const shut = (Object.keys(open) as Drawer[]).filter((name) => !beside.value[name]);
    write(besideKey, shut.length > 0 ? shut.join(' ') : null);
    root.toggleAttribute('data-no-contents', !beside.value.contents);
    root.toggleAttribute('data-no-slip', !beside.value.slip);
    if (drawer.value) root.dataset['drawer'] = drawer.value;
    else delete root.dataset['drawer'];
  });
  const stands = (name: Drawer) => matchMedia(standing[name]).matches;
  return {
    theme,
    readingsOnly,
    beside,
    drawer,
    toggle(name) {
      if (stands(name)) beside.value = { ...beside.value, [name]: !beside.value[name] };
      else drawer.value = drawer.value === name ? null : name;
    },
    isOpen: (name) => (stands(name) ? beside.value[name] : drawer.value === name),
  };
}
