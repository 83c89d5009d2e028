import { describe, expect, it } from 'vitest';
import { rowsToPrint } from '../../../src/app/printed-rows.ts';
import type { CellPicture, GridModel } from '../../../src/grid/contract.ts';

/** A sheet of two columns by its rows: `Key|choice` is an entry, `=` a result with nothing to say. */
function sheet(...lines: readonly (readonly [first: string, second: string])[]): GridModel {
  const cell = (row: number, column: number): CellPicture => {
    const [text = '', role] = (lines[row]?.[column] ?? '').split('|');
    return {
      text: text === '=' ? '' : text,
      ...(role === 'choice' && { role }),
    };
  };
  return {
    name: 'Log',
    rowCount: lines.length,
    columnCount: 2,
    frozen: { rows: 0, columns: 0 },
    columnWidth: () => 100,
    rowLabel: String,
    columnLabel: String,
    cell,
    editText: (row, column) => (lines[row]?.[column] ?? '').split('|')[0] ?? '',
    used: () => ({ rows: lines.length, columns: 2 }),
  };
}

const spare = ['|choice', '0 %|choice'] as const;
const filled = ['Key|choice', '10 %|choice'] as const;
const times = <T>(count: number, one: T): readonly T[] => Array.from({ length: count }, () => one);
const of = (model: GridModel) => rowsToPrint(model, model.rowCount, model.columnCount);

describe('rows to print', () => {
  it('are three of many prepared ones under what is filled in, and the others are named', () => {
    const { rows, leftOut } = of(sheet(filled, ...times(50, spare), ['Cautions', '']));
    expect(rows).toEqual([0, 1, 2, 3, 51]);
    expect(leftOut).toEqual([[4, 50]]);
  });

  it('are twelve prepared ones where nothing is filled in: a form', () => {
    const { rows, leftOut } = of(sheet(['Item', 'Share'], ...times(50, spare)));
    expect(rows).toHaveLength(1 + 12);
    expect(leftOut).toEqual([[13, 50]]);
  });

  it('are all that say something, alike or not', () => {
    expect(of(sheet(...times(20, filled)))).toEqual({
      rows: times(20, 0).map((_, row) => row),
      leftOut: [],
    });
    expect(of(sheet(...times(20, ['again', 'again'] as const))).rows).toHaveLength(20);
  });

  it('are one of results with nothing to say', () => {
    const { rows, leftOut } = of(sheet(['found', '1'], ...times(9, ['=', '='] as const), filled));
    expect(rows).toEqual([0, 1, 10]);
    expect(leftOut).toEqual([[2, 9]]);
  });

  it('are the blank ones that a person left blank', () => {
    expect(of(sheet(filled, ...times(6, ['', ''] as const), filled)).leftOut).toEqual([]);
  });

  it('are not fewer by a single one, which a sentence is not worth', () => {
    expect(of(sheet(filled, ...times(4, spare)))).toEqual({ rows: [0, 1, 2, 3, 4], leftOut: [] });
  });
});
