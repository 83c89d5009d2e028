import { expect, test } from 'vitest';
import { actionOf, finishOf } from '../../../src/grid/hand/keys.ts';

/** A key press without a browser. */
function key(name: string): KeyboardEvent {
  const held = name.split('+');
  return {
    key: held.at(-1) === 'Space' ? ' ' : held.at(-1),
    shiftKey: held.includes('Shift'),
    ctrlKey: held.includes('Ctrl'),
    metaKey: held.includes('Meta'),
    altKey: held.includes('Alt'),
  } as KeyboardEvent;
}

test.each([
  { press: 'ArrowDown', does: 'step', extend: false },
  { press: 'Shift+ArrowDown', does: 'step', extend: true },
  { press: 'Ctrl+Shift+ArrowLeft', does: 'edge', extend: true },
  { press: 'Meta+ArrowLeft', does: 'edge', extend: false },
  { press: 'Shift+PageUp', does: 'page', extend: true },
  { press: 'Ctrl+Home', does: 'first', extend: false },
  { press: 'Ctrl+Shift+End', does: 'last', extend: true },
])('$press does $does', ({ press, does, extend }) => {
  expect(actionOf(key(press))).toMatchObject({ does, extend });
});

test.each([
  { press: 'Shift+Space', does: 'row' },
  { press: 'Ctrl+Space', does: 'column' },
  { press: 'Ctrl+a', does: 'all' },
  { press: 'Ctrl+A', does: 'all' },
  { press: 'F2', does: 'change' },
  { press: 'Backspace', does: 'clear' },
  { press: 'Shift+F10', does: 'menu' },
])('$press does $does', ({ press, does }) => {
  expect(actionOf(key(press))).toMatchObject({ does });
});

test.each(['a', 'Space', 'Ctrl+c', 'Alt+ArrowDown', 'Ctrl+z', 'F5', 'Shift+A'])(
  '%s is left to the text box, the app or the browser',
  (press) => {
    expect(actionOf(key(press))).toBe(undefined);
  },
);

test('arrows finish an entry that was typed over and move in one that is changed', () => {
  expect(finishOf(key('ArrowUp'), true)).toBe('up');
  expect(finishOf(key('ArrowUp'), false)).toBe(undefined);
  expect(finishOf(key('Shift+ArrowUp'), true)).toBe(undefined);
});

test('Enter, Tab and Escape finish any entry', () => {
  expect(finishOf(key('Enter'), false)).toBe('down');
  expect(finishOf(key('Shift+Enter'), false)).toBe('up');
  expect(finishOf(key('Ctrl+Enter'), false)).toBe('stay');
  expect(finishOf(key('Shift+Tab'), true)).toBe('left');
  expect(finishOf(key('Escape'), true)).toBe('drop');
});
