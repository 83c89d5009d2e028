import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solve, type Answers, type Dependence, type Search } from '../../../src/choose/solve.ts';

function solved(dependence: Dependence, search: Search): Answers {
  const work = solve(dependence, search);
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}

const places = (answers: Answers) => answers.answers.map(({ at }) => at);

describe('make this equal that', () => {
  it('800 lx at 2 m are 200 lx at 4 m (inverse square)', () => {
    const found = solved((distance) => 800 * (2 / distance) ** 2, { from: 1, to: 10, wanted: 200 });
    expect(places(found)).toHaveLength(1);
    expect(places(found)[0]).toBeCloseTo(4, 10);
    expect(found.nearest).toBeUndefined();
  });

  it('finds every answer of several, in rising order', () => {
    const found = solved(Math.sin, { from: 0.5, to: 10, wanted: 0 });
    expect(places(found)).toHaveLength(3);
    for (const [index, at] of places(found).entries())
      expect(at).toBeCloseTo((index + 1) * Math.PI, 10);
  });

  it('an answer on the bounds or on a place of the grid counts once', () => {
    expect(places(solved((x) => x, { from: 0, to: 10, wanted: 0 }))).toEqual([0]);
    expect(places(solved((x) => x, { from: 0, to: 10, wanted: 10 }))).toEqual([10]);
    expect(places(solved((x) => x, { from: 0, to: 10, wanted: 5 }))).toEqual([5]);
  });

  it('none between the bounds: says what comes nearest', () => {
    const found = solved((x) => x * x + 1, { from: -3, to: 4, wanted: 0 });
    expect(found.answers).toEqual([]);
    expect(found.nearest?.at).toBeCloseTo(0, 4);
    expect(found.nearest?.value).toBeCloseTo(1, 8);
  });

  it('touches what is wanted without passing it', () => {
    const found = solved((x) => (x - Math.SQRT2) ** 2, { from: 0, to: 3, wanted: 0 });
    expect(places(found)).toHaveLength(1);
    expect(places(found)[0]).toBeCloseTo(Math.SQRT2, 4);
  });

  it('a mark that jumps over the wanted number is no answer', () => {
    const rounded = (x: number) => Math.round(x);
    const found = solved(rounded, { from: 0.2, to: 3.3, wanted: 1.6 });
    expect(found.answers).toEqual([]);
    expect(found.jumps).toHaveLength(1);
    expect(found.jumps[0]?.before.value).toBe(1);
    expect(found.jumps[0]?.after.value).toBe(2);
    expect(found.nearest?.value).toBe(2);
  });

  it('a pole is no answer', () => {
    const found = solved((x) => 1 / (x - 1.2345), { from: 0, to: 3, wanted: 0 });
    expect(found.answers).toEqual([]);
    expect(found.jumps).toHaveLength(1);
  });

  it('goes on where there is no number for a while, and counts how often', () => {
    const log = (x: number) => (x <= 0 ? undefined : Math.log2(x));
    const found = solved(log, { from: -5, to: 5, wanted: 1 });
    expect(places(found)[0]).toBeCloseTo(2, 10);
    expect(found.without).toBe(501);
  });

  it('nothing at all has no nearest', () => {
    const found = solved(() => undefined, { from: 0, to: 1, wanted: 0 });
    expect(found.answers).toEqual([]);
    expect(found.nearest).toBeUndefined();
    expect(found.without).toBe(found.tried);
  });

  it('bounds may be given the other way round', () => {
    const found = solved((x) => x ** 3, { from: 5, to: -5, wanted: 8 });
    expect(places(found)[0]).toBeCloseTo(2, 10);
  });

  it('whatever the slope and the place, a line is solved (random lines)', () => {
    const lines = fc.record({
      slope: fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      at: fc.double({ min: -99, max: 99, noNaN: true }),
    });
    fc.assert(
      fc.property(lines, ({ slope, at }) => {
        const found = solved((x) => slope * (x - at), { from: -100, to: 100, wanted: 0 });
        expect(found.answers).toHaveLength(1);
        expect(Math.abs((found.answers[0]?.at ?? NaN) - at)).toBeLessThan(1e-9);
      }),
      { numRuns: 50 },
    );
  });

  it('reports how far it is, rising to the end', () => {
    const shares = [...solve((x) => x, { from: 0, to: 1, wanted: 0.5 })];
    expect(shares.length).toBeGreaterThan(20);
    expect(shares).toEqual(shares.toSorted((a, b) => a - b));
    expect(shares.at(-1)).toBeLessThanOrEqual(1);
  });
});
