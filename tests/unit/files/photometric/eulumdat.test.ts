import { describe, expect, it } from 'vitest';
import { candelaAt } from '../../../../functions/fixture/photometry.ts';
import { readEulumdat } from '../../../../src/files/photometric/eulumdat.ts';
import { readPhotometric } from '../../../../src/files/photometric/read.ts';

interface Given {
  readonly symmetry?: number;
  readonly planes?: readonly number[];
  readonly rows?: readonly (readonly number[])[];
  readonly lamps?: readonly (readonly (string | number)[])[];
  readonly conversion?: number | string;
  readonly sizes?: readonly number[];
}

/** Line for line as the form has them: 26 of head, lamps, ten direct ratios, angles, intensities. */
function lines({
  symmetry = 1,
  planes = [0],
  rows = [[100, 50]],
  lamps = [[1, 'lamp', 2000, 'white', '1A', 90]],
  conversion = 1,
  sizes = [400, 300, 80, 400, 300, 0, 0, 0, 0],
}: Given = {}): (string | number)[] {
  return [
    ...[
      'Sail works',
      1,
      symmetry,
      planes.length,
      0,
      2,
      90,
      'report',
      'Loft lamp',
      'no',
      'file',
      'day',
    ],
    ...sizes,
    ...[100, 90, conversion, 0, lamps.length, ...lamps.flat()],
    ...Array.from({ length: 10 }, () => 0.5),
    ...planes,
    ...[0, 90],
    ...rows.flat(),
  ];
}
const text = (given?: Given) => lines(given).join('\r\n');
const at = (given: Given, gamma: number, c: number) =>
  candelaAt(readEulumdat(text(given)).photometry, gamma, c);

describe('intensities stand for 1000 lumens', () => {
  it('the flux and the conversion factor make them absolute', () => {
    expect(at({}, 0, 0)).toBe(200);
    expect(at({ conversion: 0.8 }, 0, 0)).toBe(160);
    expect(at({ conversion: '0,8' }, 45, 0)).toBe(120);
    expect(at({ lamps: [[-1, 'module', 500, '', '', 40]] }, 0, 0)).toBe(50);
  });

  it('of several sets of lamps the first is taken, which is said', () => {
    const lamps = [
      [2, 'one', 3000, '', '', 90],
      [1, 'other', 500, '', '', 40],
    ];
    const read = readEulumdat(text({ lamps }));
    expect(read.photometry.peak).toBe(300);
    expect(read.photometry.watts).toBe(90);
    expect(read.notes).toEqual(['It states 2 sets of lamps; the first was taken.']);
  });

  it('direct ratios, name and sizes are read', () => {
    const { directRatios, photometry } = readEulumdat(text());
    expect(directRatios).toEqual(Array.from({ length: 10 }, () => 0.5));
    expect(photometry.name).toBe('Loft lamp');
    expect(photometry.face).toEqual({ width: 0.3, height: 0.4, round: false });
    const round = readEulumdat(text({ sizes: [250, 0, 80, 200, 0, 0, 0, 0, 0] })).photometry;
    expect(round.face).toEqual({ width: 0.2, height: 0.2, round: true });
  });
});

describe('symmetry indicators', () => {
  const all = [0, 45, 90, 135, 180, 225, 270, 315];
  const rowsFor = (stored: readonly number[]) => stored.map((c) => [(1000 + c) / 2, 0]);
  it.each([
    [
      '0: none',
      0,
      all,
      [
        [45, 1045],
        [292.5, 1292.5],
        [337.5, 1157.5],
      ],
    ],
    [
      '1: round',
      1,
      [0],
      [
        [45, 1000],
        [200, 1000],
      ],
    ],
    [
      '2: about C0',
      2,
      [0, 45, 90, 135, 180],
      [
        [225, 1135],
        [315, 1045],
        [180, 1180],
      ],
    ],
    [
      '3: about C90, from C270 over C0',
      3,
      [270, 315, 0, 45, 90],
      [
        [0, 1000],
        [180, 1000],
        [135, 1045],
        [225, 1315],
        [270, 1270],
      ],
    ],
    [
      '4: both',
      4,
      [0, 45, 90],
      [
        [135, 1045],
        [180, 1000],
        [270, 1090],
        [315, 1045],
      ],
    ],
  ] as const)('%s', (_what, symmetry, stored, expected) => {
    const given = { symmetry, planes: all, rows: rowsFor(stored) };
    for (const [c, candela] of expected) expect(at(given, 0, c)).toBeCloseTo(candela, 9);
  });
});

describe('a broken file is refused whole, with the line', () => {
  const replaced = (line: number, by: string | number) =>
    lines()
      .map((one, index) => (index === line - 1 ? by : one))
      .join('\n');
  it.each([
    [
      'a word for a number',
      replaced(24, 'one'),
      24,
      '“one” is no number; the conversion factor should be here.',
    ],
    ['an empty line', replaced(24, ''), 24, 'The line is empty; the conversion factor'],
    ['no flux', replaced(29, 0), 29, 'The flux of the lamps must be more than zero'],
    [
      'cut short',
      lines().slice(0, -1).join('\n'),
      46,
      'The file ends before an intensity of plane 1 of 1',
    ],
    ['too much', `${text()}\r\n\r\n9`, 49, '“9” follows where the file should end'],
    [
      'no plane where one must be',
      text({ symmetry: 4, planes: [0, 60, 120] }),
      4,
      'there must be planes at C0 and C90',
    ],
  ])('%s', (_what, content, line, words) => {
    const read = readPhotometric(content);
    if (read.ok) throw new Error('It was read.');
    expect(read).toMatchObject({ line, reason: expect.stringContaining(words) });
  });
});
