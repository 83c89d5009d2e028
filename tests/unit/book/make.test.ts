import { describe, expect, test } from 'vitest';
import {
  addressOf,
  dependentsOf,
  precedentsOf,
  quantityAt,
  spotOf,
} from '../../../src/book/look.ts';
import { cellAt } from '../../../src/book/look.ts';
import { copyCells } from '../../../src/book/make/copy.ts';
import { fillCells } from '../../../src/book/make/fill.ts';
import { insertLines, removeLines } from '../../../src/book/make/lines.ts';
import { defineName } from '../../../src/book/make/names.ts';
import { describeCells } from '../../../src/book/make/properties.ts';
import { findCells, replaceAll } from '../../../src/book/make/replace.ts';
import { addSheet, describeSheet, removeSheet } from '../../../src/book/make/sheets.ts';
import { sortRegion } from '../../../src/book/make/sort.ts';
import type { SortValue } from '../../../src/book/make/sort.ts';
import { stage } from './stage.ts';

describe('filling', () => {
  const filled = (texts: string[], count: number, direction: 'down' | 'up' = 'down') => {
    const first = direction === 'down' ? 1 : 1 + count;
    const s = stage({
      Walk: Object.fromEntries(texts.map((text, i) => [`A${String(first + i)}`, text])),
    });
    const region = s.region(`A${String(first)}:A${String(first + texts.length - 1)}`);
    s.run(fillCells(s.document, s.means, region, direction, count));
    const all = s.texts().map(([text]) => text);
    return direction === 'down' ? all.slice(texts.length) : all.slice(0, count);
  };

  test.each([
    [['7'], 2, ['7', '7']],
    [['1', '2'], 3, ['3', '4', '5']],
    [['2', '1'], 3, ['0', '-1', '-2']],
    [['1', '2', '4'], 3, ['1', '2', '4']],
    [['0.1', '0.2'], 2, ['0.3', '0.4']],
    [['0.5', '1'], 2, ['1.5', '2.0']],
    [['-1', '+1'], 2, ['+3', '+5']],
    [['1 m', '2 m'], 2, ['3 m', '4 m']],
    [['1 m', '200 cm'], 2, ['1 m', '200 cm']],
    [['Key 1', 'Key 2'], 3, ['Key 1', 'Key 2', 'Key 1']],
    [['f/2.8', 'f/4'], 2, ['f/2.8', 'f/4']],
    [['1', 'x'], 2, ['1', 'x']],
    [['=B1', '=B$2'], 3, ['=B3', '=B$2', '=B5']],
  ])('%j goes on as %i more', (texts, count, expected) => {
    expect(filled(texts, count)).toEqual(expected);
  });

  test('upwards a series counts back, and what would lie above row 1 is lost', () => {
    expect(filled(['3', '4'], 2, 'up')).toEqual(['1', '2']);
    expect(filled(['=B1'], 1, 'up')).toEqual(['=#REF!']);
  });

  test('a continued number is the number it reads as', () => {
    const s = stage({ Walk: { A1: '10 ft', A2: '20 ft' } });
    s.run(fillCells(s.document, s.means, s.region('A1:A2'), 'down', 1));
    expect(cellAt(s.document, s.place('A3'))).toMatchObject({
      content: { kind: 'number', value: 30 * 0.3048 },
      typed: '30 ft',
      quantity: 'length',
    });
  });

  test('there is nothing above row 1 to fill', () => {
    const s = stage({ Walk: { A1: '1' } });
    expect(fillCells(s.document, s.means, s.region('A1'), 'up', 1)).toHaveProperty('ok', false);
  });
});

describe('copying', () => {
  test('a source is repeated over a whole multiple of it, else put down once', () => {
    const s = stage({ Walk: { A1: '1', A2: '=A1' } });
    s.run(copyCells(s.document, s.means, s.region('A1:A2'), s.region('C1:D4')));
    expect(s.texts().map((row) => row.slice(2))).toEqual([
      ['1', '1'],
      ['=C1', '=D1'],
      ['1', '1'],
      ['=C3', '=D3'],
    ]);
    s.run(copyCells(s.document, s.means, s.region('A1:A2'), s.region('F1:F3')));
    expect([s.text('F1'), s.text('F2'), s.text('F3')]).toEqual(['1', '=F1', '']);
  });

  test('contents only: the target keeps its format', () => {
    const s = stage({ Walk: { A1: '1', B1: '2' } });
    s.run(describeCells(s.document, s.means, [s.region('B1')], { format: { bold: true } }));
    const what = { what: 'contents' } as const;
    s.run(copyCells(s.document, s.means, s.region('A1'), s.region('B1'), what));
    expect(cellAt(s.document, s.place('B1'))).toMatchObject({
      typed: '1',
      format: { bold: true },
    });
  });

  test('between sheets, what has no sheet written means the sheet it is on', () => {
    const s = stage({ Walk: { B1: '=A1+Walk!A1+$A$1' }, Ice: {} });
    s.run(copyCells(s.document, s.means, s.region('B1'), s.region('Ice!C2')));
    expect(s.text('Ice!C2')).toBe('=B2+Walk!B2+$A$1');
  });

  test('nothing is pasted beyond the sheet', () => {
    const s = stage({ Walk: { A1: '1' } });
    const target = { ...s.region('A1'), left: 1000 };
    expect(copyCells(s.document, s.means, s.region('A1'), target)).toMatchObject({
      reason: 'A sheet ends at row 100000 and column ALL.',
    });
  });
});

test('sorting puts numbers, texts, truths, errors and blanks in this order, ties as they were', () => {
  const values: SortValue[] = [null, 'b', 2, { code: '#N/A' }, true, 'Á', 1, 'a', 2];
  const texts = Object.fromEntries(values.map((_, i) => [`B${String(i + 1)}`, `row ${String(i)}`]));
  const s = stage({ Walk: { A1: 'x', ...texts } });
  const region = s.region('A1:B9');
  const valueOf = ({ row }: { row: string }) =>
    values[s.document.sheets[0]?.rows.indexOf(row) ?? -1];
  const order = (descending: boolean) => {
    const made = sortRegion(s.document, region, [{ column: 0, descending }], valueOf);
    const [step] = made.ok ? made.transaction.steps : [];
    return step?.kind === 'sort' ? step.order : [];
  };
  expect(order(false)).toEqual([6, 2, 8, 5, 7, 1, 4, 3, 0]);
  expect(order(true)).toEqual([3, 4, 1, 5, 7, 2, 8, 6, 0]);
});

describe('finding and replacing in what was typed', () => {
  const script = {
    Walk: { A1: 'Key side', B1: 'key', A2: '=B1&"key"', A3: '250' },
    Ice: { A1: 'Key' },
  };
  const found = (search: Parameters<typeof findCells>[1]) => {
    const s = stage(script);
    return findCells(s.document, search).map(
      ({ sheet, row, column }) =>
        `${s.document.sheet(sheet)?.properties.name ?? ''} ${String(row)},${String(column)}`,
    );
  };

  test.each([
    [{ find: 'key' }, ['Walk 0,0', 'Walk 0,1', 'Ice 0,0']],
    [{ find: 'key', matchCase: true }, ['Walk 0,1']],
    [{ find: 'key', whole: true }, ['Walk 0,1', 'Ice 0,0']],
    [{ find: 'key', inFormulas: true }, ['Walk 0,0', 'Walk 0,1', 'Walk 1,0', 'Ice 0,0']],
    [{ find: '.' }, []],
    [{ find: '' }, []],
  ])('%j', (search, spots) => {
    expect(found(search)).toEqual(spots);
  });

  test('each text is read anew; what cannot be read stays and is listed', () => {
    const s = stage(script);
    const result = replaceAll(s.document, s.means, { find: '"key"', inFormulas: true }, '"$&');
    expect(result).toMatchObject({ replaced: 0, unread: [{ text: '=B1&"$&' }] });
    const within = s.region('A1:A3');
    s.run(replaceAll(s.document, s.means, { find: '5', within }, '8'));
    expect(cellAt(s.document, s.place('A3'))?.content).toEqual({ kind: 'number', value: 280 });
    s.book.undo();
    expect(s.text('A3')).toBe('250');
  });
});

describe('names and sheets', () => {
  test('a name that would not do comes with one that would', () => {
    const s = stage({ Walk: { A1: '1' } });
    const name = (text: string) => defineName(s.document, s.means, text, s.region('A1'));
    expect(name('Key1')).toEqual({
      ok: false,
      reason: '“Key1” reads as the address of a cell.',
      offer: 'Key_1',
    });
    expect(name('STOPS')).toMatchObject({ reason: '“STOPS” is a function.' });
    s.run(name('Key_1'));
    expect(name('key_1')).toEqual({
      ok: false,
      reason: '“Key_1” is already a name in this book.',
    });
  });

  test('a formula waits for its name, and has it the moment it is defined', () => {
    const s = stage({ Walk: { A1: '1', B1: '=key_side*2' } });
    s.run(defineName(s.document, s.means, 'Key_side', { text: '=1.5', own: s.sheet('Walk') }));
    expect(s.text('B1')).toBe('=Key_side*2');
  });

  test('a sheet keeps to its own name, and the last one stays', () => {
    const s = stage({ Walk: {}, Ice: {} });
    expect(describeSheet(s.document, s.sheet('Ice'), { name: 'WALK' })).toMatchObject({
      reason: 'There is already a sheet “Walk”.',
    });
    s.run(describeSheet(s.document, s.sheet('Walk'), { name: 'walk' }));
    s.run(removeSheet(s.document, s.sheet('Ice')));
    expect(removeSheet(s.document, s.sheet('walk'))).toMatchObject({
      reason: 'A book keeps at least one sheet.',
    });
    expect(addSheet(s.document, s.means, { name: 'a/b' })).toHaveProperty('ok', false);
  });
});

describe('where things are and who reads them', () => {
  test('places keep to their cells', () => {
    const s = stage({ Walk: { B4: 'x' } });
    const place = s.place('B4');
    s.run(insertLines(s.document, s.means, s.sheet('Walk'), 'rows', 0, 2));
    expect(addressOf(s.document, place)).toBe('B6');
    s.run(removeLines(s.document, s.sheet('Walk'), 'columns', [1]));
    expect(addressOf(s.document, place)).toBeUndefined();
    s.book.undo();
    expect(spotOf(s.document, place)).toEqual({ ...s.spot('B6') });
  });

  test('a cell knows what reads it: formulas, ranges, names and through names', () => {
    const s = stage({
      Walk: {
        A1: '1',
        B1: '=A1',
        B2: '=SUM(A:A)',
        B3: '=SUM(A2:A9)',
        B4: '=Key_side',
        B5: '=A1+A1',
      },
      Ice: { A1: '=SUM(Walk!A1:B1)' },
    });
    s.run(defineName(s.document, s.means, 'Key_side', s.region('Walk!A1')));
    const readers = () =>
      dependentsOf(s.document, s.place('A1'))
        .map(
          ({ place }) =>
            `${s.document.sheet(place.sheet)?.properties.name ?? ''} ${addressOf(s.document, place) ?? ''}`,
        )
        .toSorted();
    const all = ['Ice A1', 'Walk B1', 'Walk B2', 'Walk B4', 'Walk B5'];
    expect(readers()).toEqual(all);
    s.type({ B1: '2', B5: '' });
    expect(readers()).toEqual(['Ice A1', 'Walk B2', 'Walk B4']);
    s.book.undo();
    expect(readers()).toEqual(all);
    s.run(removeLines(s.document, s.sheet('Walk'), 'rows', [1]));
    expect(readers()).toEqual(['Ice A1', 'Walk B1', 'Walk B3', 'Walk B4']);
  });

  test('a formula knows what it reads', () => {
    const s = stage({ Walk: { B1: '=A1+A1+SUM(A:A)+key' } });
    const content = cellAt(s.document, s.place('B1'))?.content;
    if (content?.kind !== 'formula') throw new Error('no formula');
    const sheet = s.sheet('Walk');
    expect(precedentsOf(s.document, content.formula)).toEqual([
      { kind: 'cells', extent: { sheet, top: 0, left: 0, bottom: 0, right: 0 } },
      { kind: 'cells', extent: { sheet, top: 0, left: 0, bottom: Infinity, right: 0 } },
      { kind: 'name', name: 'key', defined: false },
    ]);
  });

  test('a cell’s quantity beats that of an area, and that of its column', () => {
    const s = stage({ Walk: { A1: '1', A2: '2', A3: '3 m' } });
    const sheet = s.sheet('Walk');
    const end = (address: string) => {
      const { row, column } = s.place(address);
      return { row: { id: row, fixed: false }, column: { id: column, fixed: false } };
    };
    const range = { kind: 'range', sheet, explicit: false, joint: ':' } as const;
    const area = {
      id: 'a',
      quantity: 'ev' as const,
      range: { ...range, from: end('A2'), to: end('A3') },
    };
    const properties = { quantity: 'stops' as const };
    s.book.run({
      label: 'x',
      steps: [
        {
          kind: 'setLines',
          sheet,
          axis: 'columns',
          lines: [{ id: s.place('A1').column, properties }],
        },
        { kind: 'setAreas', sheet, areas: [area] },
      ],
    });
    const quantities = ['A1', 'A2', 'A3'].map((at) => quantityAt(s.document, s.place(at)));
    expect(quantities).toEqual(['stops', 'ev', 'length']);
  });
});
