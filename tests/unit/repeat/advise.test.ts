import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import panelLux from '../../../functions/distance/PANELLUX.ts';
import { exampleFixtures } from '../../../functions/fixture/exampleFixtures.ts';
import { facing, lightsFrom, luxFrom } from '../../../functions/fixture/rigTable.ts';
import { isError } from '../../../functions/values.ts';
import { defaultWriting } from '../../../functions/quantities/index.ts';
import { advise } from '../../../src/repeat/advice/advise.ts';
import { adviceInWords } from '../../../src/repeat/advice/said.ts';
import { offAt, type LitSet, type SetLight } from '../../../src/repeat/advice/set.ts';
import { waysOf } from '../../../src/repeat/advice/ways.ts';
import { words } from '../../../src/words/words.ts';

const kit = [
  { name: 'single', stops: 1 / 2 },
  { name: 'double', stops: 1 },
];
const third = 1 / 3;

/** One lamp at one point, so many stops off. */
const one = (light: Partial<SetLight>, stops: number, rest = 0): LitSet => ({
  lights: [{ name: 'key', pieces: [], ...light }],
  points: [{ name: 'Face', wanted: 100, gives: [100 * 2 ** stops - rest], rest, light: 0 }],
  kit,
  tolerance: third,
});
const said = (set: LitSet): string => {
  const [advice] = advise(set).lights;
  if (!advice) throw new Error('no light');
  return adviceInWords(advice, { name: 'key' }, set.tolerance, defaultWriting);
};

describe('what to set on one lamp', () => {
  it('0.9 over: a double in leaves 0.1 under, or back by the root of the factor', () => {
    // 3.2 m · 2^(0.9 / 2) = 4.37 m.
    expect(said(one({ distance: 3.2 }, 0.9))).toBe(
      'Down with the key by 0.9 stop: back from 3.2 m to 4.37 m; or double in leaves 0.1 stop under.',
    );
  });

  it('a piece that is in comes out before anything else goes in', () => {
    expect(said(one({ pieces: ['Double'], output: 1 }, -1))).toBe(
      'Up with the key by 1 stop: double out.'.replace(
        'double out',
        'double out; or output from 100 % to 100 % leaves 1 stop under',
      ),
    );
  });

  it('what cannot be reached is said, and by how much', () => {
    // At 80 % a third of a stop is left to give: log2(1 / 0.8) = 0.32; a whole stop is wanted.
    const set = one({ output: 0.8 }, -1);
    expect(said(set)).toMatch(/It cannot be reached with this lamp: at best 0\.7 stop under\./);
    expect(advise(set).left[0]).toBeCloseTo(-1 - Math.log2(0.8), 9);
  });

  it('never nearer than it may stand', () => {
    const set = one({ distance: 3, nearest: 2.8 }, -1);
    // (3 / 2.8)² is 0.2 stop.
    expect(advise(set).left[0]).toBeCloseTo(-1 + 2 * Math.log2(3 / 2.8), 9);
  });

  it('ambient that is already too much leaves the lamp off, and says so', () => {
    const set = one({ output: 0.5 }, 1, 150);
    expect(said(set)).toMatch(/^The key off: output from 50 % to 0 %.*at best 0\.6 stop over/);
  });

  it('within tolerance it stays as it is', () => {
    expect(said(one({ distance: 3 }, 0.3))).toBe(words.repeat.leave('key'));
  });

  it('a lamp of which nothing is known is told by how much only', () => {
    expect(said({ ...one({}, 1.4), kit: [] })).toBe('Down with the key by 1.4 stops.');
  });
});

describe('a large even face moved', () => {
  it('follows the rectangle and not the inverse squares', () => {
    // Independent of the advice: what PANELLUX gives at both distances. Half the light from a face
    // of 2 × 2 m at 1 m is wanted.
    const face = { width: 2, height: 2 };
    const [way] = waysOf({ name: 'book light', distance: 1, face, pieces: [] }, [], 0.5);
    if (way?.kind !== 'distance') throw new Error('no distance');
    const lux = (metres: number) => Number(panelLux.run(1000, 2, 2, metres, 0, 0));
    expect(lux(way.to) / lux(1)).toBeCloseTo(0.5, 9);
    expect(way.to).toBeGreaterThan(Math.SQRT2);
  });

  it('gives up where no distance gives so much', () => {
    const face = { width: 2, height: 2 };
    const [way] = waysOf(
      { name: 'book light', distance: 0.5, nearest: 0.2, face, pieces: [] },
      [],
      9,
    );
    expect(way).toMatchObject({ kind: 'distance', to: 0.2 });
    expect(way?.factor).toBeLessThan(2);
  });
});

/** Lux of each light of a rig alone at points that face up, by the functions of the rig. */
const spots = [
  [0, 0, 0],
  [1.5, 0.5, 0],
  [-1, 1, 0],
] as const;
function rigGives(outputs: readonly number[]): readonly (readonly number[])[] {
  const at = [
    ['Bulb', 0, 0, 2, 0, 0, 0],
    ['Spot', 4, 0, 6, 1.5, 0.5, 0],
    ['Spot', -5, 2, 6, -1, 1, 0],
  ] as const;
  const rows = at.map((row, index) =>
    [...row, outputs[index] ?? 1].map((value) => ({ value, at: '' })),
  );
  const lights = lightsFrom('TEST', exampleFixtures, rows);
  if (isError(lights)) throw new Error(lights.message);
  return spots.map((spot) =>
    lights.map((light) => {
      const lux = luxFrom('TEST', [light], [...spot], facing(0, 90), 'flat');
      if (isError(lux)) throw new Error(lux.message);
      return lux;
    }),
  );
}

const setOf = (outputs: readonly number[], wanted: readonly number[], ambient: number): LitSet => ({
  lights: outputs.map((output, index) => ({ name: `light ${index}`, output, pieces: [] })),
  points: rigGives(outputs).map((gives, index) => ({
    name: `point ${index}`,
    wanted: wanted[index] ?? 1,
    gives,
    rest: ambient,
    light: index,
  })),
  kit: [],
  tolerance: third,
});

const share = fc.double({ min: 0.02, max: 1, noNaN: true });
const three = fc.tuple(share, share, share);
const totals = (outputs: readonly number[], ambient: number) =>
  rigGives(outputs).map((gives) => gives.reduce((sum, lux) => sum + lux, ambient));

describe('a rig that is rebuilt', () => {
  it('asks for no change where everything stands as it stood', () => {
    fc.assert(
      fc.property(three, fc.double({ min: 0, max: 20, noNaN: true }), (outputs, ambient) => {
        const advice = advise(setOf(outputs, totals(outputs, ambient), ambient));
        expect(advice.lights.every(({ factor }) => factor === 1)).toBe(true);
        expect(Math.max(...advice.left.map(Math.abs))).toBeLessThan(1e-9);
      }),
    );
  });

  it('comes within tolerance once the advice is applied to its model, or is said not to', () => {
    fc.assert(
      fc.property(
        three,
        three,
        fc.double({ min: 0, max: 20, noNaN: true }),
        (then, now, ambient) => {
          const wanted = totals(then, ambient);
          const set = setOf(now, wanted, ambient);
          const advice = advise(set);
          const outputs = now.map((output, light) => {
            const found = advice.lights.find((one) => one.light === light);
            return output * (found?.factor ?? 1);
          });
          expect(Math.max(...outputs)).toBeLessThanOrEqual(1 + 1e-9);
          // The model of the rig again, with the new outputs, and not the sums of the advice.
          const lit = totals(outputs, ambient);
          for (const [index, point] of set.points.entries()) {
            const off = Math.log2((lit[index] ?? 0) / point.wanted);
            expect(off).toBeCloseTo(advice.left[index] ?? NaN, 6);
          }
        },
      ),
    );
  });

  it('reaches every point where each lamp lights its own and has the light to give', () => {
    fc.assert(
      fc.property(three, three, (then, now) => {
        const set = setOf(now, totals(then, 0), 0);
        // Only what a light gives its own point: no spill that another would have to make up for.
        const points = set.points.map((point) => ({
          ...point,
          gives: point.gives.map((lux, light) => (light === point.light ? lux : 0)),
          wanted:
            ((point.gives[point.light] ?? 0) * (then[point.light] ?? 1)) / (now[point.light] ?? 1),
        }));
        const { left } = advise({ ...set, points });
        expect(Math.max(...left.map(Math.abs))).toBeLessThanOrEqual(third + 1e-6);
      }),
    );
  });

  it('a uniform change of level changes nothing between the points', () => {
    fc.assert(
      fc.property(three, fc.double({ min: 0.1, max: 10, noNaN: true }), (outputs, level) => {
        const before = setOf(outputs, [50, 50, 50], 5);
        const offs = before.points.map((point) => offAt(point, [1, 1, 1]));
        const after = before.points.map(({ gives, rest, ...point }) =>
          offAt(
            { ...point, gives: gives.map((lux) => lux * level), rest: rest * level },
            [1, 1, 1],
          ),
        );
        for (const [index, off] of after.entries())
          expect(off - (offs[index] ?? 0)).toBeCloseTo(Math.log2(level), 9);
      }),
    );
  });
});
