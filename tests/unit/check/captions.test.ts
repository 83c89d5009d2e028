import { expect, test } from 'vitest';
import { rowCaption } from '../../../src/check/captions.ts';
import { buildBook } from '../../../templates/build.ts';
import { choice, words } from '../../../templates/cells.ts';

const { document } = buildBook({
  title: 'Lamps',
  sheets: [
    {
      ...{
        name: 'Lamps',
        title: 'Lamps',
        purpose: '',
        phase: 'plan',
        template: 'lamps',
        widths: [],
      },
      cells: {
        A1: choice('Bench lamp', 'text'),
        B1: choice('yes', 'text'),
        C1: choice('3200 K', 'colourTemperature'),
        A2: choice('', 'text'),
        B2: choice('yes', 'text'),
        C2: choice('', 'colourTemperature'),
        B3: words('Spare'),
        C3: choice('3200 K', 'colourTemperature'),
        A4: words('Door lamp'),
        B4: words('its white'),
        A5: words('Rope lamp'),
        B5: { typed: 'as bought', role: 'choice' },
        A6: words('Window lamp'),
        B6: { typed: 'as bought', quantity: 'text' },
        A7: words('Floor lamp'),
        C7: choice('3200 K', 'colourTemperature'),
      },
    },
  ],
});
const sheet = document.sheets[0]?.id ?? '';
const called = (row: number) => rowCaption(document, sheet, row - 1, 2);

test('a row is called by its first words, or the label beside the cell', () => {
  expect(called(1)).toBe('Bench lamp');
  expect(called(3)).toBe('Spare');
});

test('a row whose name is still to be written is not called by what else stands in it', () => {
  expect(called(2)).toBe('');
});

test('the label beside goes before the first words, and what is chosen or measured is no label', () => {
  expect(called(4)).toBe('its white');
  expect(called(5)).toBe('Rope lamp');
  expect(called(6)).toBe('Window lamp');
  expect(called(7)).toBe('Floor lamp');
});
