import { describe, expect, it } from 'vitest';
import { candelaAt, tiltFactor } from '../../../../functions/fixture/photometry.ts';
import { readLm63 } from '../../../../src/files/photometric/lm63.ts';
import { readPhotometric } from '../../../../src/files/photometric/read.ts';

/** Four vertical angles, two planes of a quarter. */
const numbers = '1 1000 1 4 2 1 2 0.2 0.4 0 1 1 75 0 30 60 90 0 90 100 90 60 20 100 80 40 10';
const file = (body: string, head = 'IESNA:LM-63-1995', tilt = 'TILT=NONE') =>
  `${head}\n[LUMINAIRE] Loft lamp\n${tilt}\n${body}\n`;
const at = (text: string, gamma: number, c: number) =>
  candelaAt(readLm63(text).photometry, gamma, c);

describe('lines and separators (LM-63: numbers may wrap anywhere)', () => {
  const words = numbers.split(' ');
  it.each([
    ['one number a line', words.join('\n')],
    ['all on one line', words.join(' ')],
    ['commas alone', words.join(',')],
    ['commas with blanks', words.join(' , ')],
    ['tabs', words.join('\t')],
    ['empty lines between', words.join('\n\n  \n')],
    ['seven a line', words.map((word, index) => word + (index % 7 === 6 ? '\n' : ' ')).join('')],
  ])('%s', (_what, body) => {
    expect(at(file(body), 30, 45)).toBeCloseTo(85, 12);
  });

  it.each(['\r\n', '\r', '\n'])('line ends %j, with a mark of an old editor at the end', (end) => {
    expect(at(`${file(numbers).replaceAll('\n', end)}\u001a`, 60, 90)).toBe(40);
  });

  it('numbers may have signs, exponents and bare points', () => {
    const body = numbers.replace('0.2 0.4', '+.2 4.E-1').replace('100 90', '1e2 9.0E+1');
    const { photometry } = readLm63(file(body));
    expect(photometry.face).toEqual({ width: 0.4, height: 0.2, round: false });
    expect(photometry.peak).toBe(100);
  });
});

describe('editions', () => {
  const factors = numbers
    .replace('1 1000 1 4', '1 1000 2.5 4')
    .replace('0 1 1 75', '0 0.9 0.95 75');
  it.each([
    ['', 1986, 213.75],
    ['IESNA86', 1986, 213.75],
    ['IESNA91', 1991, 213.75],
    ['IESNA:LM-63-1995', 1995, 213.75],
    ['IESNA:LM-63-2002', 2002, 225],
    ['IES:LM-63-2019', 2019, 225],
  ])(
    '%s: the second factor multiplies up to 1995 and is something else later',
    (head, edition, peak) => {
      const read = readLm63(file(factors, head));
      expect(read.edition).toBe(edition);
      expect(read.photometry.peak).toBeCloseTo(peak, 10);
    },
  );

  it('keywords go on with MORE, and name the luminaire', () => {
    const more = file(numbers).replace('Loft lamp', 'Loft lamp\n[MORE] with shade');
    expect(readLm63(more).photometry.name).toBe('Loft lamp with shade');
    expect(readLm63(`OLD SAIL WORKS\nTILT=NONE\n${numbers}`).photometry.name).toBe(
      'OLD SAIL WORKS',
    );
  });

  it('sizes in feet become metres, a negative one is a round opening', () => {
    const { photometry } = readLm63(file(numbers.replace('2 0.2 0.4 0', '1 -1 -1 0')));
    expect(photometry.face).toEqual({ width: 0.3048, height: 0.3048, round: true });
  });
});

describe('tilt', () => {
  const table = '1\n3\n0 45 90\n1 0.9 0.8\n';
  it('is read where it is included, and kept apart from the intensities', () => {
    const { photometry } = readLm63(file(table + numbers, undefined, 'TILT=INCLUDE'));
    expect(photometry.peak).toBe(100);
    expect([0, 22.5, 90, 180].map((angle) => tiltFactor(photometry, angle))).toEqual([
      1, 0.95, 0.8, 0.8,
    ]);
  });

  it('is read from the file it names', () => {
    const text = file(numbers, undefined, 'TILT=LAMP.TLT');
    const asked: string[] = [];
    const read = readLm63(text, (name) => (asked.push(name), table));
    expect(asked).toEqual(['LAMP.TLT']);
    expect(tiltFactor(read.photometry, 45)).toBe(0.9);
    expect(readLm63(text).notes).toEqual([
      expect.stringContaining('LAMP.TLT, which was not there'),
    ]);
    const broken = readPhotometric(text, () => '1\n2\n0 45\n1 x');
    expect(broken).toMatchObject({
      ok: false,
      line: 3,
      reason: expect.stringContaining(
        'The tilt file LAMP.TLT is broken in line 4: “x” is no number',
      ),
    });
  });
});

describe('symmetries of type C', () => {
  const planes = (angles: readonly number[]) => {
    const rows = angles.map((angle) => `${100 + angle} ${50 + angle}`);
    return file(
      `1 -1 1 2 ${angles.length} 1 2 0 0 0 1 1 9 0 90 ${angles.join(' ')} ${rows.join(' ')}`,
    );
  };
  it.each([
    [
      'one plane stands for all',
      [0],
      [
        [0, 100],
        [123, 100],
        [359, 100],
      ],
    ],
    [
      'a quarter is mirrored twice',
      [0, 90],
      [
        [90, 190],
        [180, 100],
        [225, 145],
        [300, 160],
      ],
    ],
    [
      'a half about C0',
      [0, 90, 180],
      [
        [180, 280],
        [270, 190],
        [225, 235],
      ],
    ],
    [
      'a half about C90',
      [90, 180, 270],
      [
        [0, 280],
        [45, 235],
        [270, 370],
        [180, 280],
      ],
    ],
    [
      'no symmetry',
      [0, 120, 240, 360],
      [
        [60, 160],
        [300, 220],
      ],
    ],
    [
      'no symmetry, the last plane left out',
      [0, 120, 240],
      [
        [60, 160],
        [300, 220],
      ],
    ],
  ] as const)('%s', (_what, angles, expected) => {
    for (const [c, candela] of expected) expect(at(planes(angles), 0, c)).toBeCloseTo(candela, 9);
  });

  it('below the first and beyond the last angle it is dark', () => {
    const up = file('1 -1 1 2 1 1 2 0 0 0 1 1 9 90 180 0 100 200');
    expect([0, 89.9, 90, 180].map((gamma) => at(up, gamma, 0))).toEqual([0, 0, 100, 200]);
  });
});

describe('types A and B, turned about the aim line', () => {
  /** Bright at one vertical and one horizontal angle: 10° up, 20° right, and all that lies between. */
  const cross = (type: number) =>
    file(`1 -1 1 5 5 ${type} 2 0 0 0 1 1 9 -90 -10 0 10 90 -90 -20 0 20 90
      0 0 0 0 0  0 0 0 0 0  0 0 100 0 0  0 0 0 700 0  0 0 0 0 0`);
  const radians = Math.PI / 180;
  const toC = (x: number, y: number, z: number) =>
    [Math.atan2(Math.hypot(x, y), z) / radians, Math.atan2(y, x) / radians] as const;
  const [v, h] = [10 * radians, 20 * radians];

  it('type B: the vertical angle turns about the level axis, the horizontal lies in that plane', () => {
    const there = toC(Math.sin(h), Math.cos(h) * Math.sin(v), Math.cos(h) * Math.cos(v));
    expect(at(cross(2), ...there)).toBeGreaterThan(600);
    expect(at(cross(2), there[0], -there[1])).toBeLessThan(1);
    expect(at(cross(2), there[0], 180 - there[1])).toBeLessThan(1);
  });

  it('type A: the horizontal angle turns about the upright axis', () => {
    const there = toC(Math.cos(v) * Math.sin(h), Math.sin(v), Math.cos(v) * Math.cos(h));
    expect(at(cross(3), ...there)).toBeGreaterThan(600);
    expect(at(cross(3), 0, 0)).toBe(100);
  });

  it('along the two axes nothing is lost, and from 0 on the other side is the same', () => {
    const text = file('1 -1 1 3 3 2 2 0 0 0 1 1 9 0 7 90 0 13 90 100 70 0 80 50 0 0 0 0');
    for (const c of [0, 180]) expect(at(text, 13, c)).toBeCloseTo(80, 9);
    for (const c of [90, 270]) expect(at(text, 7, c)).toBeCloseTo(70, 9);
    expect(readLm63(text).notes).toEqual([expect.stringContaining('type B')]);
  });

  it('a lamp that is alike all round in type B comes out round in lumens', () => {
    const angles = Array.from({ length: 37 }, (_, index) => -90 + index * 5);
    const rows = angles.flatMap((hor) =>
      angles.map((ver) => 1000 * Math.max(0, Math.cos(hor * radians) * Math.cos(ver * radians))),
    );
    const text = file(
      `1 -1 1 37 37 2 2 0 0 0 1 1 9 ${angles.join(' ')} ${angles.join(' ')} ${rows.join(' ')}`,
    );
    // A cosine of 1000 cd in the middle gives 1000 π lumens.
    expect(Math.abs(readLm63(text).photometry.lumens / (1000 * Math.PI) - 1)).toBeLessThan(2e-3);
  });
});

describe('a broken file is refused whole, with the line', () => {
  it.each([
    [
      'cut short',
      file(numbers).slice(0, -8),
      4,
      'The file ends before intensity 3 of 4 in plane 2',
    ],
    [
      'a word among numbers',
      file(numbers.replace('60 20', '60 2o')),
      4,
      '“2o” is no number; intensity 4 of 4',
    ],
    ['no tilt', file(numbers, undefined, 'LAMP=ONE'), 5, 'There is no line that begins with TILT='],
    ['tilt without a word', file(numbers, undefined, 'TILT='), 3, 'TILT= must be followed by'],
    ['too much', file(`${numbers}\n7`), 5, '“7” follows where the file should end'],
    [
      'angles that fall',
      file(numbers.replace('0 30 60', '0 60 30')),
      4,
      'Vertical angles must rise: 30 comes after 60',
    ],
    [
      'an angle out of bounds',
      file(numbers.replace('60 90 0', '60 190 0')),
      4,
      'from 0 to 180 degrees, not at 190',
    ],
    [
      'planes that stop short',
      file(numbers.replace('90 0 90 100', '90 0 45 100')),
      4,
      'not from 0 to 45',
    ],
    [
      'light less than none',
      file(numbers.replace('60 20', '60 -20')),
      4,
      'An intensity is less than zero: -20',
    ],
    ['a count below two', file(numbers.replace('1 4 2', '1 1 2')), 4, 'from 2 to 5000, not 1'],
    ['a count that is no whole number', file(numbers.replace('1 4 2', '1 4.5 2')), 4, 'not 4.5'],
    [
      'more than memory holds',
      file(numbers.replace('1 4 2', '1 5000 5000')),
      4,
      'are more than a file may hold',
    ],
    [
      'an unknown type',
      file(numbers.replace('4 2 1 2', '4 2 7 2')),
      4,
      'must be 1 (C), 2 (B) or 3 (A), not 7',
    ],
    [
      'an unknown unit',
      file(numbers.replace('4 2 1 2', '4 2 1 3')),
      4,
      'must be 1 (feet) or 2 (metres), not 3',
    ],
    [
      'a multiplier of none',
      file(numbers.replace('1000 1 4', '1000 0 4')),
      4,
      'The candela multiplier must be more than zero',
    ],
    [
      'numbers beyond counting',
      file(numbers.replace('60 20', '60 1e308').replace('1000 1 4', '1000 1e9 4')),
      4,
      'too large',
    ],
  ])('%s', (_what, text, line, words) => {
    const read = readPhotometric(text);
    if (read.ok) throw new Error('It was read.');
    expect(read.line).toBe(line);
    expect(read.reason).toContain(`Line ${line}: `);
    expect(read.reason).toContain(words);
    expect(read.reason).toMatch(/Nothing was taken\.$/);
  });

  it('what is of neither form is said to be neither', () => {
    for (const text of ['', 'Harbour Hours\nnotes\n', '{"form":"halfstop book"}'])
      expect(readPhotometric(text)).toMatchObject({
        ok: false,
        line: 1,
        reason: expect.stringContaining('neither'),
      });
    expect(readPhotometric('x'.repeat(5_000_001))).toMatchObject({ ok: false });
  });
});
