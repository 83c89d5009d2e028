import { expect, test } from 'vitest';
import { tableAround } from '../../../src/commands/table.ts';
import { buildBook } from '../../../templates/build.ts';

const table = (cells: Parameters<typeof buildBook>[0]['sheets'][number]['cells']) => {
  const book = buildBook({
    title: 'Options',
    sheets: [
      {
        ...{ name: 'Options', title: 'Options', purpose: '', phase: 'order', template: '' },
        widths: [],
        cells,
      },
    ],
  });
  const [sheet] = book.document.sheets;
  if (!sheet) throw new Error('no sheet');
  return (row: number) => {
    const found = tableAround(sheet, row);
    return found && [found.top, found.height, found.width];
  };
};

const choice = { role: 'choice' } as const;

test('a table is sorted without the words over it, up to the next empty row', () => {
  const around = table({
    A1: { typed: 'Days' },
    B1: { typed: '4' },
    A3: { typed: 'Option' },
    B3: { typed: 'Cost' },
    A4: { typed: 'Panel' },
    B4: { typed: '45' },
    A5: { typed: 'Tube' },
    B5: { typed: '20' },
    C5: { typed: 'dims' },
    A7: { typed: 'In all' },
    B7: { typed: '=SUM(B4:B5)' },
  });
  expect(around(3)).toEqual([3, 2, 3]);
  expect(around(4)).toEqual([3, 2, 3]);
  // The words over it, a row alone and an empty one are no table.
  expect(around(2)).toBeUndefined();
  expect(around(6)).toBeUndefined();
  expect(around(5)).toBeUndefined();
});

test('rows that are worked out over the options are no options', () => {
  const around = table({
    A1: { typed: 'Option' },
    B1: { typed: 'Light' },
    A2: { typed: 'Wanted' },
    B2: { typed: '340' },
    A3: { typed: 'Panel', ...choice },
    B3: { typed: '400' },
    A4: { ...choice },
    B4: { typed: '0' },
  });
  expect(around(2)).toEqual([2, 2, 2]);
  expect(around(1)).toBeUndefined();
});
