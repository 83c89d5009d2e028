import { describe, expect, it } from 'vitest';
import { call } from '../../functions/call.ts';
import { byName } from '../../functions/index.ts';
import type { Argument } from '../../functions/values.ts';
import { openFilled } from '../support/filled.ts';
import { settings } from '../unit/functions/support/settings.ts';

const the = (name: string, ...given: readonly Argument[]) => {
  const definition = byName.get(name);
  if (!definition) throw new Error(`There is no ${name}`);
  return call(definition, given, settings);
};

const table = (rows: readonly (readonly (string | number)[])[]): Argument => ({
  cells: rows.flat().map((value) => ({ value })),
  width: rows[0]?.length ?? 1,
});

/** Mired shifts between usual lights as photographic dictionaries tabulate them: whole mired, positive warms. */
const printed = [
  ['5500 to 3200', 5500, 3200, 131],
  ['5500 to 3400', 5500, 3400, 112],
  ['3200 to 5500', 3200, 5500, -131],
  ['3400 to 5500', 3400, 5500, -112],
  ['3200 to 3400', 3200, 3400, -18],
  ['3400 to 3200', 3400, 3200, 18],
] as const;

describe('filters named after what they turn into what, by the mired tables', () => {
  const kit = table(printed.map(([name, , , mired]) => [name, mired, 0, 0.5]));

  it.each(printed)('FILTERFOR picks %s for it, FILTERSHIFT says the printed shift', (...row) => {
    const [name, from, to, mired] = row;
    expect(the('FILTERFOR', from, 0, to, 0, kit)).toBe(name);
    expect(the('FILTERSHIFT', name, kit)).toBe(mired);
    const through = the('KELVINTHROUGH', from, mired);
    expect(Math.abs(Number(through) - to)).toBeLessThan(10);
  });
});

describe('two lights mixed by their tristimulus values (CIE 15)', () => {
  /** Illuminants A, D50 and D65: x, y as CIE 15 prints them. */
  const points = {
    A: [0.44758, 0.40745],
    D50: [0.34567, 0.35851],
    D65: [0.31272, 0.32903],
  } as const;

  it.each([
    ['A', 'D65', 300, 100],
    ['A', 'D65', 20, 180],
    ['A', 'D50', 100, 100],
    ['D65', 'A', 70, 30],
  ] as const)('%s and %s, %d and %d: MIXSHARE finds the share back', (first, second, one, two) => {
    const [[x1, y1], [x2, y2]] = [points[first], points[second]];
    const X = (one * x1) / y1 + (two * x2) / y2;
    const sum = one / y1 + two / y2;
    const share = the('MIXSHARE', x1, y1, x2, y2, X / sum, (one + two) / sum);
    expect(share).toBeCloseTo(two / (one + two), 9);
  });
});

describe('the sheet as it opens, filled by somebody new to it', () => {
  it('waits quietly for each reading, by the name of its cell', () => {
    const { valueOf, errors } = openFilled('match');
    expect(valueOf('K10')).toMatchObject({ waiting: true, message: 'waiting for kelvin (D10)' });
    expect(valueOf('B4')).toMatchObject({ waiting: true });
    expect(errors()).toEqual([]);
  });

  it('6900 K at a 3200 K camera: 10⁶ / 6900 is 144.9 mired, 168 from 312.5', () => {
    const { type, valueOf } = openFilled('match');
    type('D10', '6900 K');
    expect(valueOf('K10')).toBe('168 mired too blue');
    expect(valueOf('O10')).toBe('Full orange');
    // The kit of somebody else: 159 mired and 0.7 stop.
    type('B39', '159');
    type('D39', '0.7');
    expect(valueOf('L10')).toBe(
      '6900 K at a 3200 K camera: 168 mired too blue; full orange leaves 9 mired and costs about 3/4 stop',
    );
  });

  it('x and y go before kelvin: illuminant A is a lamp of 2856 K (CIE 15)', () => {
    const { type, valueOf } = openFilled('match');
    type('D10', '6900 K');
    type('F10', '0.44758');
    type('G10', '0.40745');
    expect(Math.abs(Number(valueOf('Z10')) - 2856)).toBeLessThan(2);
    expect(valueOf('K10')).toBe('38 mired too warm');
  });

  it('what is taken instead is counted, a piece that is not in the kit is named', () => {
    const { type, valueOf } = openFilled('match');
    type('D10', '6900 K');
    type('H10', '400 lx');
    type('N10', 'half orange + quarter magenta');
    expect(valueOf('R10')).toBeCloseTo(80 - 167.572, 2);
    // 0.45 and 0.25: 400 / 2^0.7.
    expect(Number(valueOf('V10'))).toBeCloseTo(246.2, 1);
    type('N10', 'rose');
    expect(valueOf('U10')).toMatchObject({ message: 'FILTERLOSS: “rose” is not in the kit.' });
  });

  it('all that agree are left, and the balance has nothing to gain', () => {
    const { type, valueOf } = openFilled('match');
    for (const cell of ['D10', 'D11', 'D12']) type(cell, '3200 K');
    expect(valueOf('B4')).toBe('Leave Key, Window, Practical.');
    expect(valueOf('B5')).toBe('The white wanted costs least: all lose 0 stop together.');
  });

  it('the least loss first; the camera balanced to what lies between loses less', () => {
    const { type, valueOf } = openFilled('match');
    type('D10', '5600 K');
    type('D11', '5600 K');
    type('D12', '4300 K');
    // 312.5 − 178.6 = 133.9 and 312.5 − 232.6 = 79.9 mired: a full (160) for each of two, a half (80).
    expect(valueOf('B4')).toBe(
      'Correct Practical (half orange, 1/2 stop), then Key (full orange, 3/4 stop), then Window (full orange, 3/4 stop).',
    );
    // 232.6 − 178.6 = 54 mired: a quarter (40, 1/4 stop) for each of two leaves 14, a half would leave 26.
    expect(valueOf('B5')).toBe(
      'It costs less to leave Practical and balance the camera to it, 4300 K: all lose 1/2 stop together; at the white wanted 2 stops.',
    );
  });

  it('one that cannot be filtered and stays off outweighs any loss; one that is meant to be off does not', () => {
    const { type, valueOf } = openFilled('match');
    type('D10', '3250 K');
    type('D11', '6900 K');
    type('C11', 'no');
    type('D12', '2400 K');
    // 416.7 − 312.5 = 104.2 mired too warm: a half blue (−70, 0.9 stop) leaves 34, a full one (−140) 36.
    // From 6900 K, 144.9 mired: a full blue (1.6 stops) for each of two.
    expect(valueOf('L11')).toMatch(/168 mired too blue; nothing can be put on it$/);
    expect(valueOf('B5')).toBe(
      'Fewer stay off if you leave Window and balance the camera to it, 6900 K: all lose 3 1/4 stops together; at the white wanted 1 stop, and 1 that cannot be filtered stays off.',
    );
    type('C11', 'meant');
    expect(valueOf('L11')).toMatch(/: meant: 168 mired too blue$/);
    expect(valueOf('B4')).toBe('Leave Key, Window. Correct Practical (half blue, 1 stop).');
    // 416.7 − 307.7 = 109 mired: a half orange (80, 0.45 stop) leaves 29.
    expect(valueOf('B5')).toBe(
      'It costs less to leave Practical and balance the camera to it, 2400 K: all lose 1/2 stop together; at the white wanted 1 stop.',
    );
  });

  it('two channels: the mix is set, and no setting between comes nearer', () => {
    const { type, valueOf, evaluate } = openFilled('match');
    for (const [cell, text] of [
      ['D19', '2700 K'],
      ['H19', '800 lx'],
      ['D20', '6500 K'],
      ['H20', '1000 lx'],
      ['B1', '4300 K'],
    ] as const)
      type(cell, text);
    const [warm, cool] = [Number(valueOf('F23')), Number(valueOf('G23'))];
    expect(Math.max(warm, cool)).toBe(1);
    // Levels add.
    expect(Number(valueOf('H23'))).toBeCloseTo(800 * warm + 1000 * cool, 6);
    const away = (share: number) => {
      const [a, b] = [`${1 - share}/J19`, `${share}/J20`];
      const [x, y] = [`((${a}*I19+${b}*I20)/(${a}+${b}))`, `(1/(${a}+${b}))`];
      return Number(evaluate(`COLOURDIFFERENCE(${x},${y},F1,G1)`));
    };
    const share = Number(valueOf('P23'));
    expect(Number(valueOf('T23'))).toBeCloseTo(away(share), 9);
    for (const other of [share - 0.02, share + 0.02])
      expect(away(other)).toBeGreaterThan(away(share));
  });
});
