import { describe, expect, it } from 'vitest';
import { expected as backdrop } from '../../templates/backdrop/expected.ts';
import { expected as distances } from '../../templates/fixtures-and-distances/expected.ts';
import { expected as marks } from '../../templates/marks/expected.ts';
import { expected as setPlan } from '../../templates/set-plan/expected.ts';
import type { ExpectedCell } from '../../templates/expected.ts';
import {
  along,
  direct,
  dome,
  flat,
  fromSheet,
  looking,
  luminanceOf,
  towards,
  type Lamp,
  type Place,
} from '../support/apart.ts';
import { openFilled } from '../support/filled.ts';

// Rooms and lamps are invented. What a paper can do stands in expected.ts of each template; the
// levels are summed here apart from us, from the shapes that the lamps were written from
// (src/tools/sample-fixtures.ts), by inverse square, cosine, cardioid and Lambert over patches.

const templates: readonly (readonly [string, readonly ExpectedCell[]])[] = [
  ['fixtures-and-distances', distances],
  ['set-plan', setPlan],
  ['marks', marks],
  ['backdrop', backdrop],
];

const books = new Map(templates.map(([name]) => [name, openFilled(name)]));
const sheetOf = (name: string) => books.get(name)!;
const numberIn = (name: string, cell: string) => Number(sheetOf(name).valueOf(cell));

describe.each(templates)('%s', (name, expected) => {
  it.each(expected)('$cell comes to $value: $why', ({ cell, value, ...rest }) => {
    const got = sheetOf(name).valueOf(cell);
    if (typeof value === 'string') expect(got ?? '').toBe(value);
    else expect(Math.abs(Number(got) - value)).toBeLessThanOrEqual(rest.within ?? 1e-9);
  });

  it('no cell is an error', () => {
    expect(sheetOf(name).errors()).toEqual([]);
  });
});

const cosine = (degrees: number) => Math.cos((degrees * Math.PI) / 180);
const bell = (candela: number, beam: number, power: number) => (gamma: number) =>
  candela * 2 ** -((gamma / (beam / 2)) ** power);
const flood = bell(4_600, 50, 3.5);
const profile = bell(26_000, 19, 14);
const openFace = (gamma: number, c: number) => bell(8_200, 74 + 26 * cosine(c) ** 2, 2.2)(gamma);
const softPanel = (gamma: number, c: number) =>
  gamma < 90 ? 4_300 * cosine(gamma) ** (1.6 - 0.3 * cosine(c) ** 2) : 0;

/** A frame square to the lamp, so many metres before it. */
function frame(lamp: Lamp, side: number, metres: number, kept: number) {
  const normal = towards(lamp.at, lamp.aim);
  const middle = along(lamp.at, lamp.aim, metres);
  const sheet = { middle, normal, width: side, height: side };
  const from: Place = [-normal[0], -normal[1], -normal[2]];
  return { sheet, luminance: luminanceOf(sheet, lamp, from, kept) };
}

const keyLamp: Lamp = { at: [-2.1, -1.8, 2.2], aim: [0, 0, 1.3], share: 1, candela: flood };
const fill: Lamp = { at: [2.4, -1.8, 1.6], aim: [0, 0, 1.2], share: 0.04, candela: softPanel };
const back: Lamp = {
  ...{ at: [1.2, 2.6, 2.9], aim: [0, 0, 1.3] },
  ...{ share: 0.07 * 2 ** -0.5, candela: profile },
};
const boardLamp: Lamp = { at: [-1.8, 2.2, 2.4], aim: [-3, 0.8, 2], share: 0.6, candela: openFace };

const key = frame(keyLamp, 1.2, 1, 0.5);
const boardNormal = towards([-3, 0.8, 2], [0.4, 3, 1.4]);
const board = { middle: boardLamp.aim, normal: boardNormal, width: 1, height: 1 };
const boardLuminance = luminanceOf(board, boardLamp, boardNormal, 0.8);

/** Key, fill, back and canvas at a point. */
const parts = (at: Place, look: Place, weight: typeof dome) => [
  fromSheet(key.sheet, key.luminance, at, look, weight),
  direct(fill, at, look, weight),
  direct(back, at, look, weight),
  fromSheet(board, boardLuminance, at, look, weight),
];
const total = (list: readonly number[]) => list.reduce((sum, one) => sum + one, 0);

/** Cells of the files are 2° and more apart and straight between: a good per cent. */
const close = (got: number, summed: number) =>
  expect(Math.abs(got / summed - 1)).toBeLessThan(0.015);

describe('the set plan, summed apart', () => {
  it.each([
    [12, [-0.08, -0.05, 1.2], looking(-130), 6],
    [13, [0.08, -0.05, 1.2], looking(127), 14],
    [14, [0.15, 0.1, 1.1], looking(25, 30), 4],
    [15, [-1.2, 3, 1.4], looking(180), 2],
    [16, [1.2, 3, 1.4], looking(180), 2],
    [17, [1.9, 0.6, 0.8], looking(180, 90), 9],
  ] as const)('row %d: dome, flat, and whose light it is', (row, at, look, ambient) => {
    const domes = parts(at, look, dome);
    const all = total(domes) + ambient;
    close(numberIn('set-plan', `H${row}`), all);
    close(numberIn('set-plan', `I${row}`), total(parts(at, look, flat)));
    domes.forEach((part, index) => {
      const share = numberIn('set-plan', `${'LMNO'[index]}${row}`);
      expect(Math.abs(share - part / all)).toBeLessThan(0.01);
    });
    expect(Math.abs(numberIn('set-plan', `R${row}`) - ambient / all)).toBeLessThan(0.01);
    const shares = [...'LMNOR'].map((column) => numberIn('set-plan', `${column}${row}`));
    expect(total(shares)).toBeCloseTo(1, 9);
  });

  it('stops from the key follow from the levels', () => {
    const stops = Math.log2(numberIn('set-plan', 'H13') / numberIn('set-plan', 'H12'));
    expect(numberIn('set-plan', 'J13')).toBeCloseTo(stops, 12);
  });

  it('a light taken away leaves the shares to the others, and a gap in the rows does no harm', () => {
    const { type, valueOf, errors } = openFilled('set-plan');
    type('B4', '');
    expect(valueOf('M11')).toBe('');
    expect(valueOf('M12')).toBe('');
    const at: Place = [-0.08, -0.05, 1.2];
    const [keyPart = 0, , backPart = 0, boardPart = 0] = parts(at, looking(-130), dome);
    const all = keyPart + backPart + boardPart + 6;
    close(Number(valueOf('H12')), all);
    expect(Math.abs(Number(valueOf('N12')) - backPart / all)).toBeLessThan(0.01);
    expect(errors()).toEqual([]);
  });

  it('a frame with its loss not yet written waits and says for what', () => {
    const { type, valueOf, errors } = openFilled('set-plan');
    type('O3', '');
    expect(valueOf('H12')).toMatchObject({ waiting: true });
    expect(valueOf('H12')).toMatchObject({ message: expect.stringMatching(/through or bounce/) });
    expect(errors()).toEqual([]);
  });

  it('a lamp that the book does not keep is said by name', () => {
    const { type, errors } = openFilled('set-plan');
    type('B5', 'Moon');
    expect(errors()[0]).toMatch(/no fixture “Moon”/);
  });
});

describe('marks, summed apart', () => {
  const at: Place = [0, 0, 1.2];
  const level = (place: Place) => total(parts(place, looking(-140), dome).slice(0, 3)) + 8;

  it('the dome on the chair, and on the last mark against it', () => {
    close(numberIn('marks', 'H12'), level(at));
    const last = total(parts([1.7, 0.4, 1.6], looking(-140), dome).slice(0, 3)) + 9;
    close(numberIn('marks', 'H15'), last);
    expect(sheetOf('marks').valueOf('T15')).toMatch(/under$/);
  });

  it('onwards and back the light is a third of a stop off where the room ends', () => {
    for (const [cell, sign] of [
      ['R12', 1],
      ['S12', -1],
    ] as const) {
      const metres = numberIn('marks', cell);
      const off = Math.log2(level([sign * metres, 0, 1.2]) / level(at));
      expect(Math.abs(Math.abs(off) - 1 / 3)).toBeLessThan(0.02);
    }
  });

  it('the key holds about the chair from where its frame is a third of a stop brighter', () => {
    const [near, far] = [numberIn('marks', 'L21'), numberIn('marks', 'L22')];
    const { middle } = key.sheet;
    const lux = (metres: number) => {
      const place = along(middle, at, metres);
      return fromSheet(key.sheet, key.luminance, place, towards(place, middle), flat);
    };
    const here = lux(Math.hypot(middle[0], middle[1], middle[2] - 1.2));
    expect(Math.abs(Math.log2(lux(near) / here) - 1 / 3)).toBeLessThan(0.001);
    expect(Math.abs(Math.log2(lux(far) / here) + 1 / 3)).toBeLessThan(0.001);
  });
});

describe('a backdrop, summed apart', () => {
  const lamps = [-1, 1].map((side): Lamp => ({
    ...{ at: [side * 2.4, 0.2, 2.9], aim: [side * 0.7, 3, 1.1] },
    ...{ share: 0.5 * 2 ** -0.5, candela: openFace },
  }));
  const lux = (x: number, z: number) =>
    total(lamps.map((lamp) => direct(lamp, [x, 3, z], looking(180), flat))) + 2;

  it('each point of the grid', () => {
    [2.6, 1.95, 1.3, 0.65, 0].forEach((z, row) => {
      [...'CDEFGHIJK'].forEach((column, index) => {
        close(numberIn('backdrop', `${column}${21 + row}`), lux(-2 + index / 2, z));
      });
    });
  });

  it('its figures are those of its points', () => {
    const levels = [2.6, 1.95, 1.3, 0.65, 0].flatMap((z) =>
      Array.from({ length: 9 }, (_, index) => lux(-2 + index / 2, z)),
    );
    const [high, low] = [Math.max(...levels), Math.min(...levels)];
    const mean = total(levels) / levels.length;
    close(numberIn('backdrop', 'C16'), high);
    close(numberIn('backdrop', 'C17'), mean);
    close(numberIn('backdrop', 'C18'), low);
    expect(Math.abs(numberIn('backdrop', 'I16') - Math.log2(high / low))).toBeLessThan(0.03);
    expect(Math.abs(numberIn('backdrop', 'I17') - low / mean)).toBeLessThan(0.01);
    expect(numberIn('backdrop', 'I18')).toBeGreaterThanOrEqual(numberIn('backdrop', 'I16') - 1e-9);
  });
});
