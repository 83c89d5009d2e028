import { describe, expect, it } from 'vitest';
import { fixturesFrom } from '../../functions/fixture/exampleFixtures.ts';
import type { Fixture } from '../../functions/fixture/fixture.ts';
import { photometryOf } from '../../functions/fixture/photometry.ts';
import { luxAt, type Placed } from '../../functions/fixture/rig.ts';
import { lightsFrom } from '../../functions/fixture/rigTable.ts';
import { spotPhotometry } from '../../functions/fixture/spot.ts';
import { point } from '../../functions/fixture/throw.ts';
import { isError } from '../../functions/values.ts';

type Cell = string | number | undefined;
type Vector = readonly [number, number, number];

/** 628.3 lm evenly all round. */
const bulb: Fixture = {
  kind: 'projector',
  name: 'Bulb',
  photometry: photometryOf({
    name: 'Bulb',
    planes: new Float64Array(1),
    gammas: Float64Array.of(0, 180),
    candela: Float64Array.of(50, 50),
    watts: 40,
    face: point,
  }),
};
const bulbLumens = 50 * 4 * Math.PI;

const spot = (beam: number): Fixture => ({
  kind: 'projector',
  name: `Spot ${beam}`,
  photometry: spotPhotometry({
    name: 'Spot',
    candela: 20_000,
    beam,
    field: 1.8 * beam,
    watts: undefined,
    face: point,
  }),
});
const panel: Fixture = {
  kind: 'panel',
  name: 'Panel',
  width: 0.6,
  height: 0.3,
  luminance: 9_000,
  watts: undefined,
};
const beams = [8, 20, 50].map(spot);
const fixtures = fixturesFrom([bulb, panel, ...beams]);

function lights(...rows: readonly (readonly Cell[])[]): readonly Placed[] {
  const found = lightsFrom(
    'TEST',
    fixtures,
    rows.map((row) => row.map((value) => ({ value }))),
  );
  if (isError(found)) throw new Error(found.message);
  return found;
}
const light = (...row: readonly Cell[]): Placed => lights(row)[0]!;

function refusal(...row: readonly Cell[]): string {
  const found = lightsFrom('TEST', fixtures, [row.map((value) => ({ value }))]);
  return isError(found) ? found.message : 'taken';
}

const none = undefined;
const bare = [1, 0, 0] as const;
const toward = (a: Vector, b: Vector): Vector => {
  const [x, y, z] = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
  const far = Math.hypot(x, y, z);
  return [x / far, y / far, z / far];
};

/** Σ L · cos · cos · dA / d² over 100 × 100 patches of an upright square that faces along +y. */
function patches(luminance: number, side: number, middle: Vector, at: Vector, look: Vector) {
  const count = 100;
  const step = side / count;
  let lux = 0;
  for (let row = 0; row < count; row += 1) {
    for (let column = 0; column < count; column += 1) {
      const x = middle[0] + (column + 0.5) * step - side / 2 - at[0];
      const y = middle[1] - at[1];
      const z = middle[2] + (row + 0.5) * step - side / 2 - at[2];
      const squared = x * x + y * y + z * z;
      const leaving = -y / Math.sqrt(squared);
      const coming = (x * look[0] + y * look[1] + z * look[2]) / Math.sqrt(squared);
      if (leaving > 0 && coming > 0) lux += (luminance * leaving * coming * step * step) / squared;
    }
  }
  return lux;
}

describe('a diffusion frame', () => {
  // A bulb in the middle of a cube sends a sixth of its light through each side.
  it('before a bulb in the middle of a cube gets a sixth of its lumens', () => {
    const frame = light('Bulb', 0, 0, 0, 0, 1, 0, ...bare, 2, 2, 1, 0);
    const { fixture } = frame;
    if (fixture.kind !== 'panel') throw new Error('A frame is a panel.');
    expect(Math.PI * fixture.luminance * 4).toBeCloseTo(bulbLumens / 6, 9);
    expect(frame.at).toEqual([0, 1, 0]);
    expect(frame.forward).toEqual([0, 1, 0]);
    expect(frame.lamp?.at).toEqual([0, 0, 0]);
  });

  it('loses its stops, and the lamp’s output and loss count before it', () => {
    const lux = (output: number, loss: number, through: number) =>
      luxAt(light('Bulb', 0, 0, 0, 0, 1, 0, output, loss, 0, 2, 2, 1, through), [0, 3, 0]);
    expect(lux(1, 0, 1.5)).toBeCloseTo(lux(1, 0, 0) / 2 ** 1.5, 12);
    expect(lux(0.25, 1, 0)).toBeCloseTo(lux(1, 0, 0) / 8, 12);
  });

  it('is the sum of 10,000 patches near, aside, and turned to the receiver', () => {
    const frame = light('Spot 50', 0, 0, 1.5, 0, 1, 1.5, ...bare, 1.2, 1.2, 1, 1);
    const { fixture, at } = frame;
    if (fixture.kind !== 'panel') throw new Error('A frame is a panel.');
    const look = toward([0.9, 1.6, 1.2], [0, 1, 1.5]);
    for (const [place, facing] of [
      [
        [0, 1.3, 1.5],
        [0, -1, 0],
      ],
      [
        [0.5, 1.8, 1.1],
        [0, -1, 0],
      ],
      [[0.9, 1.6, 1.2], look],
      [[2, 4, 1], toward([2, 4, 1], at)],
    ] as const) {
      const summed = patches(fixture.luminance, 1.2, at, place, facing);
      expect(Math.abs(luxAt(frame, place, facing) / summed - 1)).toBeLessThan(2e-4);
    }
  });

  it('from far off is a point of its candela, and near gives less than one', () => {
    const frame = light('Bulb', 0, 0, 0, 0, 1, 0, ...bare, 2, 2, 1, 0);
    // Φ / π on the axis of a matt face.
    const candela = bulbLumens / 6 / Math.PI;
    expect((luxAt(frame, [0, 1001, 0]) * 1000 ** 2) / candela).toBeCloseTo(1, 5);
    // A square from as far as its side: 4/√5 · atan(1/√5) of it (table of configuration factors).
    expect((luxAt(frame, [0, 3, 0]) * 2 ** 2) / candela).toBeCloseTo(0.752_274_688, 8);
  });

  it('may face elsewhere than the lamp’s aim, but not back at the lamp', () => {
    const turned = light('Bulb', 0, 0, 0, 0, 1, 0, ...bare, 1, 1, 1, 0, none, 1, 2, 0);
    expect(turned.forward[0]).toBeCloseTo(Math.SQRT1_2, 12);
    expect(turned.forward[1]).toBeCloseTo(Math.SQRT1_2, 12);
    expect(refusal('Bulb', 0, 0, 0, 0, 1, 0, ...bare, 1, 1, 1, 0, none, 0, 0, 0)).toMatch(
      /faces the lamp/,
    );
  });
});

describe('a bounce board', () => {
  it('stands where the lamp is aimed, looks back at it, and sends its share back', () => {
    const board = light('Bulb', 0, 0, 1, 0, 2, 1, ...bare, 1, 1, none, none, 0.8);
    expect(board.at).toEqual([0, 2, 1]);
    expect(board.forward).toEqual([0, -1, 0]);
    const frame = light('Bulb', 0, 0, 1, 0, 2, 1, ...bare, 1, 1, 2, 0);
    expect(luxAt(board, [0, 0.5, 1])).toBeCloseTo(0.8 * luxAt(frame, [0, 3.5, 1]), 12);
    expect(luxAt(board, [0, 3.5, 1])).toBe(0);
  });

  it('turned to the subject gets the cosine less from a lamp that is far', () => {
    const row = ['Bulb', 0, -200, 0, 0, 0, 0, ...bare, 1, 1, none, none, 1] as const;
    const luminance = ({ fixture }: Placed) => (fixture.kind === 'panel' ? fixture.luminance : NaN);
    const square = luminance(light(...row));
    const turned = luminance(light(...row, Math.sqrt(3), -1, 0));
    expect(turned / square).toBeCloseTo(0.5, 4);
    expect(refusal(...row, 1, 1, 0)).toMatch(/shows it its back/);
  });
});

describe('energy never grows', () => {
  /** Lumens through a sphere about a light, by 10,000 directions spread evenly. */
  function thrown(source: Placed, radius: number): number {
    const count = 10_000;
    const golden = Math.PI * (3 - Math.sqrt(5));
    let sum = 0;
    for (let index = 0; index < count; index += 1) {
      const z = 1 - (2 * index + 1) / count;
      const [level, turn] = [Math.sqrt(1 - z * z), index * golden];
      const out: Vector = [level * Math.cos(turn), level * Math.sin(turn), z];
      const at = [0, 1, 2].map((axis) => source.at[axis]! + radius * out[axis]!);
      const [x = 0, y = 0, height = 0] = at;
      sum += luxAt(source, [x, y, height], [-out[0], -out[1], -out[2]]);
    }
    return (4 * Math.PI * radius ** 2 * sum) / count;
  }
  const distances = [0.02, 1, 4];
  const cases = ['Bulb', 'Panel', ...beams.map(({ name }) => name)].flatMap((name) =>
    distances.map((distance) => [name, distance] as const),
  );

  it.each(cases)('%s %d m behind a frame and before a board', (name, distance) => {
    const lamp = light(name, 0, 0, 0, 0, 1, 0);
    const { fixture } = lamp;
    const all =
      fixture.kind === 'panel'
        ? Math.PI * fixture.luminance * fixture.width * fixture.height
        : fixture.photometry.lumens;
    const frame = light(name, 0, 0, 0, 0, 1, 0, ...bare, 1.2, 1.2, distance, 0);
    const board = light(name, 0, 0, 0, 0, 1, 0, ...bare, 1.2, 1.2, distance, none, 1);
    for (const source of [frame, board]) {
      const lumens = thrown(source, 5);
      expect(lumens).toBeGreaterThan(0);
      expect(lumens).toBeLessThan(all * 1.002);
    }
  });

  it('a frame that catches the whole beam gives all of it on', () => {
    const frame = light('Spot 8', 0, 0, 0, 0, 1, 0, ...bare, 2, 2, 1, 0);
    const lamp = light('Spot 8', 0, 0, 0, 0, 1, 0);
    if (lamp.fixture.kind !== 'projector') throw new Error('A spot is no panel.');
    expect(thrown(frame, 5) / lamp.fixture.photometry.lumens).toBeCloseTo(1, 2);
  });
});

describe('what a row of a frame still wants', () => {
  it.each([
    [[1.2], /waiting for height/],
    [[1.2, 1.2, 1], /waiting for through or bounce/],
    [[1.2, 1.2, none, 1], /waiting for distance/],
    [[1.2, 1.2, 1, 1, 0.5], /not both/],
    [[1.2, 1.2, 1, 1, none, 3], /waiting for towards x, y and z/],
    [[none, none, none, 1], /waiting for width/],
    [[1.2, 1.2, 1, -1], /through .* must be zero or more/],
    [[1.2, 1.2, 1, none, 1.5], /bounce .* must be from 0 to 1/],
    [['cloth', 1.2, 1, 1], /width .* must be a number/],
  ] as const)('%j: %s', (sheet, sentence) => {
    expect(refusal('Bulb', 0, 0, 0, 0, 1, 0, ...bare, ...sheet)).toMatch(sentence);
  });
});
