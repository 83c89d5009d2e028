import { describe, expect, it } from 'vitest';
import { nearestPieces } from '../../../../functions/filter/nearestPieces.ts';
import { named, piecesOf, sumOf } from '../../../../functions/filter/swatches.ts';
import { tintedSources } from '../../../../functions/filter/tintedSources.ts';
import { isError, type TableCell } from '../../../../functions/values.ts';

type Typed = number | string | boolean | undefined;

const table = (rows: readonly (readonly Typed[])[]) =>
  rows.map((row, line) =>
    row.map((value, column): TableCell => ({ at: `${'ABCDE'[column]}${line + 1}`, value })),
  );

const kit = table([
  ['Piece', 'Shift', 'Tint', 'Loses'],
  ['Orange', 100, undefined, 0.5],
  [undefined, undefined, undefined, undefined],
  [' Magenta ', undefined, -0.008, 0.4],
  ['Pale + warm', 20, 0, 0.1],
]);

describe('a kit from cells', () => {
  it('a heading and blank rows are passed over, a shift left blank is none', () => {
    expect(piecesOf('FILTERFOR', kit)).toEqual([
      { name: 'Orange', mired: 100, duv: 0, loss: 0.5 },
      { name: 'Magenta', mired: 0, duv: -0.008, loss: 0.4 },
      { name: 'Pale + warm', mired: 20, duv: 0, loss: 0.1 },
    ]);
  });

  it.each<[readonly (readonly Typed[])[], object]>([
    [
      [['Orange', 100, 0]],
      {
        code: '#VALUE!',
        message: 'FILTERFOR: kit must be four columns: piece, mired, Duv and loss.',
      },
    ],
    [[[undefined, 100, 0, 1]], { message: 'waiting for piece (A1)', waiting: true }],
    [[['Orange', 100, 0, undefined]], { message: 'waiting for loss (D1)', waiting: true }],
    [
      [['Orange', 'much', 0, 1]],
      { code: '#VALUE!', message: 'FILTERFOR: mired (B1) must be a number.' },
    ],
    [
      [
        ['Orange', 100, 0, 1],
        ['Piece', 'Shift', 'Tint', 'Loses'],
      ],
      { code: '#VALUE!', message: 'FILTERFOR: mired (B2) must be a number.' },
    ],
    [
      [['Orange', 100, 0, -1]],
      { code: '#NUM!', message: 'FILTERFOR: loss (D1) must be zero or more, not -1.' },
    ],
  ])('%j: a sentence with its place', (rows, fault) => {
    expect(piecesOf('FILTERFOR', table(rows))).toMatchObject(fault);
  });

  it('names are found in any case, alone, together, and with a plus of their own', () => {
    const pieces = piecesOf('FILTERFOR', kit);
    if (isError(pieces)) throw new Error(pieces.message);
    const found = (text: string) => {
      const result = named('FILTERLOSS', text, pieces);
      return isError(result) ? result.message : result.map(({ name }) => name);
    };
    expect(found(' ORANGE ')).toEqual(['Orange']);
    expect(found('magenta + Orange')).toEqual(['Magenta', 'Orange']);
    expect(found('pale + warm')).toEqual(['Pale + warm']);
    expect(found('None')).toEqual([]);
    expect(found('')).toEqual([]);
    expect(found('Orange + rose')).toBe('FILTERLOSS: “rose” is not in the kit.');
  });

  it('what is named is summed: shift, tint and loss', () => {
    expect(sumOf('FILTERSHIFT', 'mired', 'Orange + Magenta', kit)).toBe(100);
    expect(sumOf('FILTERTINT', 'duv', 'Orange + Magenta', kit)).toBe(-0.008);
    expect(sumOf('FILTERLOSS', 'loss', 'Orange + Magenta', kit)).toBeCloseTo(0.9, 12);
    expect(sumOf('FILTERLOSS', 'loss', 'Orange', table([['Orange', 1, 0]]))).toMatchObject({
      code: '#VALUE!',
    });
  });
});

describe('the nearest pieces', () => {
  const daylight = { kelvin: 5000, duv: 0 };
  const tungsten = { kelvin: 3200, duv: 0 };
  const piece = (name: string, mired: number, duv: number, loss = 0.5) => ({
    ...{ name, mired, duv, loss },
  });
  const names = (...asked: Parameters<typeof nearestPieces>) =>
    nearestPieces(...asked).map(({ name }) => name);

  it('of two that come as near the one that loses less goes on', () => {
    const twins = [piece('dark', 112.5, 0, 1), piece('clear', 112.5, 0, 0.6)];
    expect(names(daylight, tungsten, twins)).toEqual(['clear']);
  });

  it('what would hardly be seen stays off', () => {
    const near = { kelvin: 1e6 / (312.5 - 2), duv: 0 };
    expect(names(near, tungsten, [piece('faint', 2, 0)])).toEqual([]);
  });

  it('two oranges are never laid on each other, an orange and a magenta are', () => {
    expect(names(daylight, tungsten, [piece('half', 56, 0), piece('other half', 56.5, 0)])).toEqual(
      ['other half'],
    );
    const kit = [piece('orange', 112, 0), piece('pink', 0, -0.01)];
    expect(names({ kelvin: 5000, duv: 0.01 }, tungsten, kit)).toEqual(['orange', 'pink']);
  });

  it('a magenta never goes on what is not too green, however far the orange leaves it', () => {
    const kit = [piece('weak orange', 30, 0), piece('pink', 0, -0.016)];
    expect(names({ kelvin: 6900, duv: 0.002 }, { kelvin: 2400, duv: 0 }, kit)).toEqual([
      'weak orange',
    ]);
    expect(names({ kelvin: 2400, duv: 0 }, { kelvin: 6900, duv: 0.002 }, kit)).toEqual([]);
  });

  it('a blue that would pass the end of all colour temperatures is not taken', () => {
    expect(names({ kelvin: 20_000, duv: 0 }, daylight, [piece('blue', -60, 0)])).toEqual([]);
  });

  it('what would lead past the coldest or the hottest that there is stays off, that far it goes', () => {
    const cold = { kelvin: 1000, duv: 0 };
    const hot = { kelvin: 100_000, duv: 0 };
    expect(
      names({ kelvin: 1050, duv: 0 }, { kelvin: 1002, duv: 0 }, [piece('amber', 60, 0)]),
    ).toEqual([]);
    expect(names({ kelvin: 1250, duv: 0 }, cold, [piece('amber', 200, 0)])).toEqual(['amber']);
    expect(
      names({ kelvin: 25_000, duv: 0 }, { kelvin: 90_000, duv: 0 }, [piece('blue', -35, 0)]),
    ).toEqual([]);
    expect(names({ kelvin: 25_000, duv: 0 }, hot, [piece('blue', -30, 0)])).toEqual(['blue']);
  });

  // Both coordinates of the tint count, each the right way: worked out once by the locus of CIE 015.
  it.each([
    [6300, [113, -0.006], [141, -0.001], 1],
    [5600, [138, -0.003], [105, -0.003], 0],
    [4800, [88, -0.005], [80, -0.009], 0],
    [6900, [72, -0.009], [65, -0.003], 0],
  ] as const)(
    'of two on a green %d K light the nearer in u′, v′ goes on',
    (kelvin, one, other, best) => {
      const kit = [piece('0', one[0], one[1]), piece('1', other[0], other[1])];
      expect(names({ kelvin, duv: 0.008 }, tungsten, kit)).toEqual([String(best)]);
    },
  );

  it('one magenta is never laid on another', () => {
    const kit = [piece('half pink', 0, -0.005), piece('pink', 0, -0.006)];
    expect(names({ kelvin: 3200, duv: 0.011 }, tungsten, kit)).toEqual(['pink']);
  });

  it('an empty kit has nothing', () => {
    expect(names(daylight, tungsten, [])).toEqual([]);
  });
});

describe('sources from cells', () => {
  it('a heading, blank rows and what may not be changed are passed over', () => {
    const rows = table([
      ['Kelvin', 'Duv', 'Filtered'],
      [5600, 0.001, 'yes'],
      [undefined, undefined, undefined],
      [3000, 0, ' No '],
      [3100, 0, false],
      [4000, -0.002, undefined],
    ]);
    expect(tintedSources('MATCHLOSS', rows)).toEqual([
      { kelvin: 5600, duv: 0.001 },
      { kelvin: 4000, duv: -0.002 },
    ]);
  });

  it('the coldest and the hottest, the greenest and the pinkest belong to it', () => {
    const ends = [
      [1000, -0.05, 'yes'],
      [100_000, 0.05, 'yes'],
    ];
    expect(tintedSources('MATCHLOSS', table(ends))).toEqual([
      { kelvin: 1000, duv: -0.05 },
      { kelvin: 100_000, duv: 0.05 },
    ]);
  });

  it('a cell without a place is named by its column', () => {
    const row = [{ value: 5600 }, { value: undefined }, { value: 'yes' }].map(({ value }) => ({
      ...{ at: '', value },
    }));
    expect(tintedSources('MATCHLOSS', [row])).toEqual({
      ...{ code: '#N/A', message: 'waiting for duv', waiting: true },
    });
  });

  it.each<[readonly Typed[], object, string]>([
    [
      [5600, 0],
      { code: '#VALUE!' },
      'MATCHLOSS: sources must be three columns: kelvin, duv, may be changed.',
    ],
    [[undefined, 0, 'yes'], { code: '#N/A', waiting: true }, 'waiting for kelvin (A1)'],
    [[5600, undefined, 'yes'], { code: '#N/A', waiting: true }, 'waiting for duv (B1)'],
    [['warm', 0, 'yes'], { code: '#VALUE!' }, 'MATCHLOSS: kelvin (A1) must be a number.'],
    [
      [900, 0, 'yes'],
      { code: '#NUM!' },
      'MATCHLOSS: kelvin (A1) must be from 1000 to 100000, not 900.',
    ],
    [
      [5600, 0.1, 'yes'],
      { code: '#NUM!' },
      'MATCHLOSS: duv (B1) must be from -0.05 to 0.05, not 0.1.',
    ],
  ])('%j: %j, %s', (row, fault, message) => {
    expect(tintedSources('MATCHLOSS', table([row]))).toEqual({ ...fault, message });
  });
});
