import { describe, expect, it } from 'vitest';
import { mixed } from '../../../../functions/colour/mixed.ts';
import type { TableCell } from '../../../../functions/values.ts';

type Typed = number | string | undefined;

/** Cells as a sheet hands them over: A2, B2 and so on. */
const table = (rows: readonly (readonly Typed[])[]) =>
  rows.map((row, line) =>
    row.map((value, column): TableCell => ({
      at: `${'ABC'[column]}${line + 1}`,
      value,
    })),
  );

describe('several lights together', () => {
  it('as much of each: the mean of their tristimulus values (CIE 15)', () => {
    // X = 0.3/0.3 + 0.4/0.4 = 2, Y = 2, sum = 1/0.3 + 1/0.4.
    const sum = 1 / 0.3 + 1 / 0.4;
    const found = mixed(
      'MIXX',
      table([
        [1, 0.3, 0.3],
        [1, 0.4, 0.4],
      ]),
    );
    expect(found).toMatchObject({
      x: expect.closeTo(2 / sum, 12),
      y: expect.closeTo(2 / sum, 12),
    });
  });

  it('a heading and blank rows are passed over, a light of no level counts for nothing', () => {
    const alone = mixed('MIXX', table([[5, 0.3127, 0.329]]));
    const rows = [
      ['Level', 'x', 'y'],
      [undefined, undefined, undefined],
      [5, 0.3127, 0.329],
      [0, 0.6, 0.3],
    ];
    expect(mixed('MIXX', table(rows))).toEqual(alone);
  });

  it.each<[readonly (readonly Typed[])[], object]>([
    [
      [[5, 0.3]],
      { code: '#VALUE!', message: 'MIXX: lights must be three columns: level, x and y.' },
    ],
    [[['much', 0.3, 0.3]], { code: '#VALUE!', message: 'MIXX: level (A1) must be a number.' }],
    [[[5, 0.3, 'green']], { code: '#VALUE!', message: 'MIXX: y (C1) must be a number.' }],
    [[[undefined, 0.3, 0.3]], { code: '#N/A', message: 'waiting for level (A1)', waiting: true }],
    [[[5, undefined, 0.3]], { code: '#N/A', message: 'waiting for x (B1)', waiting: true }],
    [[[5, 0.3, undefined]], { code: '#N/A', message: 'waiting for y (C1)', waiting: true }],
    [
      [[-1, 0.3, 0.3]],
      { code: '#NUM!', message: 'MIXX: level (A1) must be zero or more, not -1.' },
    ],
    [[[5, 1.2, 0.3]], { code: '#NUM!', message: 'MIXX: x (B1) must be from 0 to 1, not 1.2.' }],
    [[[5, 0.3, 0]], { code: '#NUM!', message: 'MIXX: y (C1) must be from 0.001 to 1, not 0.' }],
    [[[0, 0.3, 0.3]], { code: '#NUM!', message: 'no light at lights', quiet: true }],
    [
      [
        ['Level', 'x', 'y'],
        ['a', 'b', 'c'],
      ],
      { code: '#VALUE!', message: 'MIXX: level (A2) must be a number.' },
    ],
  ])('%j: a sentence with its place', (rows, fault) => {
    expect(mixed('MIXX', table(rows))).toEqual(fault);
  });

  it('without a place on a sheet the sentence names the column alone', () => {
    const rows = [[{ value: 5 }, {}, { value: 0.3 }]];
    expect(mixed('MIXX', rows as never)).toMatchObject({ message: 'waiting for x' });
  });
});
