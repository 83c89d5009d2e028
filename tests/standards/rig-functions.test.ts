import { describe, expect, it } from 'vitest';
import { call } from '../../functions/call.ts';
import type { AnyDefinition } from '../../functions/define.ts';
import FIELDEVENNESS from '../../functions/fixture/FIELDEVENNESS.ts';
import FIELDLUX from '../../functions/fixture/FIELDLUX.ts';
import FIELDSPREAD from '../../functions/fixture/FIELDSPREAD.ts';
import HOLDSFROM from '../../functions/fixture/HOLDSFROM.ts';
import HOLDSTO from '../../functions/fixture/HOLDSTO.ts';
import NEARFIELDERROR from '../../functions/fixture/NEARFIELDERROR.ts';
import POINTHOLDS from '../../functions/fixture/POINTHOLDS.ts';
import POINTLUX from '../../functions/fixture/POINTLUX.ts';
import POINTSHARE from '../../functions/fixture/POINTSHARE.ts';
import POINTSOFTNESS from '../../functions/fixture/POINTSOFTNESS.ts';
import { fixturesFrom } from '../../functions/fixture/exampleFixtures.ts';
import type { Fixture } from '../../functions/fixture/fixture.ts';
import { photometryOf } from '../../functions/fixture/photometry.ts';
import { point, type Face } from '../../functions/fixture/throw.ts';
import { usual } from '../../functions/usual.ts';
import { isError, type Argument } from '../../functions/values.ts';
import cases from './cases/photometry.json' with { type: 'json' };

/** A fixture with its intensities by angle from the aim line, alike all round it. */
function round(name: string, gammas: readonly number[], candela: readonly number[], face = point) {
  const table = { gammas: Float64Array.from(gammas), candela: Float64Array.from(candela) };
  const photometry = { name, planes: new Float64Array(1), ...table, watts: undefined, face };
  return { kind: 'projector', name, photometry: photometryOf(photometry) } satisfies Fixture;
}
const alike = (name: string, candela: number) => round(name, [0, 180], [candela, candela]);

const disc = (width: number): Face => ({ width, height: width, round: true });
const angles = Array.from({ length: 1801 }, (_, index) => index / 20);
const fixtures = fixturesFrom([
  alike('100 cd', 100),
  alike('1200 lm', 1200 / (4 * Math.PI)),
  alike('250 cd', 250),
  round('Reflector', [15, 30, 45, 60, 75, 90], [50, 125, 240, 190, 155, 140]),
  round(
    'Aimed',
    angles,
    angles.map((gamma) => 10_000 * Math.cos((gamma * Math.PI) / 180) ** 10),
  ),
  round('Disc', [0, 180], [100, 100], disc(1)),
  { kind: 'panel', name: 'Square', width: 1, height: 1, luminance: 1000, watts: undefined },
]);

function work(definition: AnyDefinition, ...args: readonly Argument[]): number {
  const result = call(definition, args, { ...usual, fixtures });
  if (isError(result)) throw new Error(result.message);
  return Number(result);
}

const table = (...rows: readonly (readonly (string | number)[])[]) => ({
  cells: rows.flat().map((value) => ({ value })),
  width: rows[0]?.length ?? 0,
});
const above = (name: string, x: number, y: number, z: number) => [name, x, y, z, x, y, 0];
const foot = 0.3048;

function stated(id: string): number {
  const found = cases.find((one) => one.id === id);
  if (typeof found?.expected !== 'number') throw new Error(id);
  return found.expected;
}

describe('point by point, as worked in print', () => {
  // Sources stand beside each case in cases/photometry.json.
  it.each([
    ['photometry-001-ex-1200lm', above('1200 lm', 0, 0, 8), [6, 0, 0, 0, 90]],
    ['photometry-005-ex-45', above('100 cd', 0, 0, 2), [0, 0, 0, 0, 45]],
    ['photometry-009-ex-paper', above('100 cd', 0, 0, 4), [3, 0, 0, 0, 90]],
    ['photometry-025-rect-perp', above('Square', 0, 0, 1), [1.5, 0, 0, -90, 0]],
  ] as const)('%s', (id, lamp, place) => {
    expect(work(POINTLUX, table(lamp), ...place) / stated(id)).toBeCloseTo(1, 9);
  });

  it('photometry-015-aimed, tabulated every twentieth of a degree', () => {
    const lux = work(POINTLUX, table(['Aimed', 0, 0, 6, 3, 0, 0]), 4, 1, 0, 0, 90);
    expect(lux / stated('photometry-015-aimed')).toBeCloseTo(1, 5);
  });

  // Exercise with a polar curve (two lamps 4 m apart, 2 m over a plane, askfilo.com); worked by hand
  // 1 m from the foot of one: 26.57° and 107.8 cd from √5 m, 56.31° and 202.3 cd from √13 m.
  it('two reflectors 4 m apart give 27.9 lx a metre from the foot of one', () => {
    const two = table(above('Reflector', 0, 0, 2), above('Reflector', 4, 0, 2));
    const [near, far] = [(107.83 * 2) / 5 ** 1.5, (202.3 * 2) / 13 ** 1.5];
    expect(Math.abs(work(POINTLUX, two, 1, 0, 0, 0, 90) - near - far)).toBeLessThan(0.01);
    expect(
      Math.abs(work(POINTSHARE, two, 1, 1, 0, 0, 0, 90, 0, 'flat') - near / (near + far)),
    ).toBeLessThan(1e-3);
  });

  // Textbook exercise (four lamps of 250 cd, 6 m over the corners of a lawn of 4 m; its middle):
  // by symmetry a quarter each; with as much ambient again, an eighth.
  it('each of four lamps over the corners of a lawn has a quarter of its middle', () => {
    const corners = [
      [0, 0],
      [4, 0],
      [0, 4],
      [4, 4],
    ] as const;
    const rig = table(...corners.map(([x, y]) => above('250 cd', x, y, 6)));
    const lux = 6000 / 44 ** 1.5;
    for (const light of [1, 2, 3, 4]) {
      expect(work(POINTSHARE, rig, light, 2, 2, 0, 0, 90, 0, 'flat')).toBeCloseTo(1 / 4, 12);
      expect(work(POINTSHARE, rig, light, 2, 2, 0, 0, 90, lux, 'flat')).toBeCloseTo(1 / 8, 12);
    }
    expect(work(POINTSHARE, rig, '250 cd', 2, 2, 0, 0, 90, 0, 'flat')).toBeCloseTo(1, 12);
    expect(work(POINTSHARE, rig, 0, 2, 2, 0, 0, 90, lux, 'flat')).toBeCloseTo(1 / 2, 12);
  });
});

describe('an area', () => {
  const lamp = table(above('1200 lm', 0, 0, 8));
  const floor = table([-6, 0, 0], [6, 0, 0], [-6, 0.001, 0]);

  // The same lamp 8 m over a floor: I / 64 at its foot, 0.764 lx 6 m off (case 001).
  it('has its highest at the foot of the lamp and its lowest at the ends', () => {
    expect(work(FIELDLUX, lamp, floor, 'highest', 3, 2)).toBeCloseTo(1200 / (4 * Math.PI * 64), 6);
    expect(work(FIELDLUX, lamp, floor, 'lowest', 3, 2)).toBeCloseTo(
      stated('photometry-001-ex-1200lm'),
      6,
    );
  });

  // CIE S 017: uniformity is the least illuminance over the mean; the spread is one in stops.
  it('is as even as its points say', () => {
    const [foot, end] = [1200 / (4 * Math.PI * 64), stated('photometry-001-ex-1200lm')];
    expect(work(FIELDEVENNESS, lamp, floor, 3, 2)).toBeCloseTo((3 * end) / (foot + 2 * end), 6);
    expect(work(FIELDSPREAD, lamp, floor, 3, 2)).toBeCloseTo(Math.log2(foot / end), 6);
  });

  it('looked at from behind gets nothing', () => {
    const ceiling = table([6, 0, 0], [-6, 0, 0], [6, 1, 0]);
    expect(work(FIELDLUX, lamp, ceiling, 'highest')).toBe(0);
  });
});

describe('how deep the light holds', () => {
  const lamp = table(['100 cd', 0, 0, 1, 0, 1, 1]);

  // Common practice: f-numbers read as feet are a stop apart, so from 8 ft a stop reaches to 5.6 and 11.
  it('one stop about 8 ft is 5.6 to 11 ft, to the rounding of the marks', () => {
    const mark = [lamp, 1, 0, 8 * foot, 1, 1] as const;
    expect(Math.abs(work(HOLDSFROM, ...mark) / foot - 5.6)).toBeLessThan(0.1);
    expect(Math.abs(work(HOLDSTO, ...mark) / foot - 11.3)).toBeLessThan(0.1);
    const walk = [lamp, 0, 8 * foot, 1, 180, 0] as const;
    expect(Math.abs(work(POINTHOLDS, ...walk, 0, 1) / foot - 3.3)).toBeLessThan(0.1);
    expect(Math.abs(work(POINTHOLDS, ...walk, 180, 1) / foot - 2.4)).toBeLessThan(0.1);
  });

  it('two stops are twice as far and half as far (inverse square law)', () => {
    expect(work(HOLDSTO, lamp, 1, 0, 3, 1, 2)).toBeCloseTo(6, 9);
    expect(work(HOLDSFROM, lamp, 1, 0, 3, 1, 2)).toBeCloseTo(1.5, 9);
  });

  it('a panel close by holds deeper than a point, and right up to its face where nothing is too bright', () => {
    const square = table(['Square', 0, 0, 1, 0, 1, 1]);
    const [from, to] = [HOLDSFROM, HOLDSTO].map((one) => work(one, square, 1, 0, 1, 1, 1));
    expect(from).toBeLessThan(Math.SQRT1_2);
    expect(to).toBeLessThan(Math.SQRT2 + 0.2);
    // 752 lx from 1 m, and at its face no more than π · 1000 lx: 2.06 stops.
    expect(work(HOLDSFROM, square, 1, 0, 1, 1, 2.1)).toBeCloseTo(0, 9);
    expect(work(HOLDSFROM, square, 1, 0, 1, 1, 2)).toBeGreaterThan(0);
  });
});

describe('near a face', () => {
  // IES Lighting Handbook, five-times rule: 1.0 % for a disc, 1.33 % for a square (case 028).
  it('the inverse square law is off by what the five-times rule says', () => {
    const disc = table(['Disc', 0, 0, 0, 0, 1, 0]);
    const square = table(['Square', 0, 0, 0, 0, 1, 0]);
    expect(2 ** work(NEARFIELDERROR, disc, 1, 0, 5, 0)).toBeCloseTo(1.01, 12);
    expect(2 ** work(NEARFIELDERROR, square, 1, 0, 5, 0) - 1).toBeCloseTo(
      stated('photometry-028-five-times-square'),
      9,
    );
    expect(work(POINTSOFTNESS, disc, 1, 0, 5, 0)).toBeCloseTo(11.42, 2);
  });
});
