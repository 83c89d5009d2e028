import { describe, expect, test } from 'vitest';
import { nameOf, namesOf, writtenKeys, type Pressed } from '../../../src/panels/kit/keys.ts';

const press = (key: string, held: Partial<Pressed> = {}): Pressed => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
});

describe('a key press as commands write it', () => {
  test.each<[string, Pressed, boolean]>([
    ['Ctrl+Z', press('z', { ctrlKey: true }), false],
    ['Ctrl+Shift+Z', press('Z', { ctrlKey: true, shiftKey: true }), false],
    ['Ctrl+Z', press('z', { metaKey: true }), true],
    ['Alt+Shift+ArrowUp', press('ArrowUp', { altKey: true, shiftKey: true }), false],
    ['Ctrl+Alt+=', press('=', { ctrlKey: true, altKey: true }), false],
    ['?', press('?', { shiftKey: true }), false],
    ['Shift+Space', press(' ', { shiftKey: true }), false],
    ['F2', press('F2'), false],
  ])('%s', (name, pressed, mac) => {
    expect(nameOf(pressed, mac)).toBe(name);
  });

  test('on a Mac, Control is not Cmd', () => {
    expect(nameOf(press('z', { ctrlKey: true }), true)).toBe('Z');
  });
});

test('keys are printed as the keyboard names them', () => {
  expect(writtenKeys('Ctrl+Shift+Z')).toBe('Ctrl Shift Z');
  expect(writtenKeys('Ctrl+Shift+Z', true)).toBe('⌘⇧Z');
  expect(writtenKeys('Alt+ArrowUp')).toBe('Alt ↑');
});

test('Shift and a sign goes by the key too, whatever Shift makes of it', () => {
  const pressed = press('>', { altKey: true, shiftKey: true, code: 'Period' });
  expect(namesOf(pressed)).toContain('Alt+Shift+.');
});
