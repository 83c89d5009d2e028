import type { Move } from '../contract.ts';
import { steps, type Step } from '../travel.ts';

/** What a key asks of the grid while no editor is open. */
export type KeyAction =
  | { readonly does: 'step' | 'edge'; readonly step: Step; readonly extend: boolean }
  | { readonly does: 'page'; readonly step: Step; readonly extend: boolean }
  | { readonly does: 'home' | 'end' | 'first' | 'last'; readonly extend: boolean }
  | { readonly does: 'next'; readonly move: Move }
  | { readonly does: 'row' | 'column' | 'all' | 'change' | 'clear' | 'menu' | 'leave' | 'focus' };

const arrows: Readonly<Record<string, Step>> = {
  ArrowDown: steps.down,
  ArrowUp: steps.up,
  ArrowRight: steps.right,
  ArrowLeft: steps.left,
};

const plain: Readonly<Record<string, KeyAction>> = {
  Tab: { does: 'next', move: 'right' },
  Enter: { does: 'next', move: 'down' },
  F2: { does: 'change' },
  Delete: { does: 'clear' },
  Backspace: { does: 'clear' },
  Escape: { does: 'leave' },
  ContextMenu: { does: 'menu' },
  PageDown: { does: 'page', step: steps.down, extend: false },
  PageUp: { does: 'page', step: steps.up, extend: false },
  Home: { does: 'home', extend: false },
  End: { does: 'end', extend: false },
};

const withShift: Readonly<Record<string, KeyAction>> = {
  Tab: { does: 'next', move: 'left' },
  Enter: { does: 'next', move: 'up' },
  F10: { does: 'menu' },
  ' ': { does: 'row' },
  PageDown: { does: 'page', step: steps.down, extend: true },
  PageUp: { does: 'page', step: steps.up, extend: true },
  Home: { does: 'home', extend: true },
  End: { does: 'end', extend: true },
};

const withCtrl: Readonly<Record<string, KeyAction>> = {
  ' ': { does: 'column' },
  a: { does: 'all' },
  Home: { does: 'first', extend: false },
  End: { does: 'last', extend: false },
  Backspace: { does: 'focus' },
};

const withCtrlShift: Readonly<Record<string, KeyAction>> = {
  ' ': { does: 'all' },
  Home: { does: 'first', extend: true },
  End: { does: 'last', extend: true },
};

export function actionOf(event: KeyboardEvent): KeyAction | undefined {
  if (event.altKey) return undefined;
  const ctrl = event.ctrlKey || event.metaKey;
  const arrow = arrows[event.key];
  if (arrow) return { does: ctrl ? 'edge' : 'step', step: arrow, extend: event.shiftKey };
  const table = ctrl
    ? event.shiftKey
      ? withCtrlShift
      : withCtrl
    : event.shiftKey
      ? withShift
      : plain;
  return table[ctrl && event.key.length === 1 ? event.key.toLowerCase() : event.key];
}

const finishingArrows: Readonly<Record<string, Move>> = {
  ArrowDown: 'down',
  ArrowUp: 'up',
  ArrowRight: 'right',
  ArrowLeft: 'left',
};

/** Keys that finish an open entry, and where the selection goes then. */
export function finishOf(event: KeyboardEvent, arrowsFinish: boolean): Move | 'drop' | undefined {
  if (event.altKey) return undefined;
  if (event.key === 'Escape') return 'drop';
  if (event.key === 'Enter') {
    return event.ctrlKey || event.metaKey ? 'stay' : event.shiftKey ? 'up' : 'down';
  }
  if (event.key === 'Tab') return event.shiftKey ? 'left' : 'right';
  if (!arrowsFinish || event.shiftKey || event.ctrlKey || event.metaKey) return undefined;
  return finishingArrows[event.key];
}
