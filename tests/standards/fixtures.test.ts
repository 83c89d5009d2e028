import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { call } from '../../functions/call.ts';
import type { AnyDefinition } from '../../functions/define.ts';
import FARFIELD from '../../functions/distance/FARFIELD.ts';
import FIXTUREDISTANCE from '../../functions/fixture/FIXTUREDISTANCE.ts';
import FIXTUREFARFIELD from '../../functions/fixture/FIXTUREFARFIELD.ts';
import FIXTURELUX from '../../functions/fixture/FIXTURELUX.ts';
import FIXTUREWATTS from '../../functions/fixture/FIXTUREWATTS.ts';
import POINTDOME from '../../functions/fixture/POINTDOME.ts';
import POINTLUX from '../../functions/fixture/POINTLUX.ts';
import { exampleFixtures, fixturesFrom } from '../../functions/fixture/exampleFixtures.ts';
import type { Fixture, Fixtures } from '../../functions/fixture/fixture.ts';
import { candelaAt, photometryOf } from '../../functions/fixture/photometry.ts';
import { point } from '../../functions/fixture/throw.ts';
import { usual } from '../../functions/usual.ts';
import { isError, type Argument } from '../../functions/values.ts';
import { readPhotometric } from '../../src/files/photometric/read.ts';

const folder = join(import.meta.dirname, 'photometric-files');

function read(file: string) {
  const result = readPhotometric(readFileSync(join(folder, file), 'utf8'));
  if (!result.ok) throw new Error(result.reason);
  return result.photometry;
}

function withFixtures(fixtures: Fixtures) {
  return (definition: AnyDefinition, ...args: readonly Argument[]): number => {
    const result = call(definition, args, { ...usual, fixtures });
    if (isError(result)) throw new Error(result.message);
    return Number(result);
  };
}

function alike(name: string, candela: number): Fixture {
  const table = { gammas: Float64Array.of(0, 180), candela: Float64Array.of(candela, candela) };
  const photometry = { name, planes: new Float64Array(1), ...table, watts: undefined, face: point };
  return { kind: 'projector', name, photometry: photometryOf(photometry) };
}

const rig = (...rows: readonly (readonly (string | number)[])[]) => ({
  cells: rows.flat().map((value) => ({ value })),
  width: rows[0]?.length ?? 0,
});

describe('point by point, as worked in print', () => {
  // Physics exercise with its solution, byjus.com: 628 lm evenly all round (50 cd), 1 m away,
  // the surface 37° out of square: 40 lx, with cos 37° taken as 4/5.
  it('628 lumens all round give 40 lx at 1 m on a surface turned by 37°', () => {
    const work = withFixtures(fixturesFrom([alike('Bulb', 628 / (4 * Math.PI))]));
    const turned = work(POINTLUX, rig(['Bulb', 0, 1, 0, 0, 0, 0]), 0, 0, 0, 37, 0);
    expect(Math.abs(turned - 40)).toBeLessThan(0.1);
    expect(work(FIXTURELUX, 'Bulb', 1)).toBeCloseTo(50, 1);
    expect(work(FIXTUREDISTANCE, 'Bulb', 50)).toBeCloseTo(1, 2);
  });

  // Textbook exercise (point-by-point calculation, sample problem 3): four lamps of 250 cd, 6 m over
  // the corners of a lawn of 4 m; the middle is √44 m from each, so 4 · 250 · 6 / 44^1.5.
  it('four lamps over the corners of a lawn add up in its middle', () => {
    const work = withFixtures(fixturesFrom([alike('Lamp', 250)]));
    const corners = [
      [0, 0],
      [4, 0],
      [0, 4],
      [4, 4],
    ].map(([x = 0, y = 0]) => ['Lamp', x, y, 6, x, y, 0]);
    expect(work(POINTLUX, rig(...corners), 2, 2, 0, 0, 90)).toBeCloseTo(6000 / 44 ** 1.5, 10);
  });
});

describe('lumens by an independent integration: directions spread evenly over the sphere', () => {
  const files = readdirSync(folder);
  const points = 400_000;
  // A spiral whose turns stand a golden angle apart has a point for every equal part of the sphere.
  const golden = 180 * (3 - Math.sqrt(5));
  it.each(files)('%s', (file) => {
    const photometry = read(file);
    let sum = 0;
    for (let index = 0; index < points; index += 1) {
      const gamma = (Math.acos(1 - (2 * index + 1) / points) * 180) / Math.PI;
      sum += candelaAt(photometry, gamma, index * golden);
    }
    const lumens = (4 * Math.PI * sum) / points;
    expect(Math.abs(lumens - photometry.lumens)).toBeLessThan(5e-4 * photometry.lumens);
  });
});

describe('the receptor', () => {
  const work = withFixtures(exampleFixtures);
  // A cardioid, (1 + cos θ)/2: ISO 2720 asks it of a hemispherical receptor (from memory).
  it.each([
    [0, 1],
    [60, 0.75],
    [90, 0.5],
    [120, 0.25],
    [180, 0],
  ])('a dome turned %d° away from a lamp reads %d of it', (azimuth, share) => {
    const lamp = rig(['Bulb', 0, 2, 0, 0, 0, 0]);
    expect(work(POINTDOME, lamp, 0, 0, 0, azimuth, 0)).toBeCloseTo(25 * share, 10);
  });
});

describe('what a file states', () => {
  // Column `input watts` of each file, read by eye.
  it.each([
    ['a_rotational_2002.ies', 25],
    ['b_quadrant_1995_commas.ies', 60],
    ['f_1986_no_header.ies', 200],
    ['k_spot_irregular_2002.ies', 300],
    ['a_rotational.ldt', 100],
  ])('%s draws %d W', (file, watts) => {
    const work = withFixtures(
      fixturesFrom([{ kind: 'projector', name: 'One', photometry: read(file) }]),
    );
    expect(work(FIXTUREWATTS, 'One')).toBe(watts);
  });

  // Five times the face (IES Lighting Handbook, five-times rule): 1 foot across, in metres.
  it('its far field begins at five times the round face of 1 foot', () => {
    const photometry = read('f_1986_no_header.ies');
    const work = withFixtures(fixturesFrom([{ kind: 'projector', name: 'One', photometry }]));
    expect(work(FIXTUREFARFIELD, 'One')).toBeCloseTo(5 * 0.3048, 12);
    expect(work(FIXTUREFARFIELD, 'One')).toBe(work(FARFIELD, '1 ft'));
  });
});
