import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import { CIRCUITSFOR } from '../../../../functions/index.ts';
import { fewestCircuits } from '../../../../functions/power/packing.ts';
import { settings } from '../support/settings.ts';

const range = (...watts: readonly number[]) => ({
  cells: watts.map((value, index) => ({ value, at: `A${index + 1}` })),
});
const circuits = (loads: readonly number[], ...factors: readonly number[]) =>
  call(CIRCUITSFOR, [range(...loads), 230, 16, range(...factors), 1], settings);

describe('fixtures on circuits of 16 A at 230 V', () => {
  it('one that fills a circuit to the last watt is carried', () => {
    expect(circuits([3680], 1)).toBe(1);
    expect(circuits([3681], 1)).toMatchObject({
      code: '#NUM!',
      message: 'CIRCUITSFOR: loads has one of 3681 W, more than a whole circuit carries.',
    });
  });

  it('each is reckoned with its own power factor', () => {
    // 2000 W at 0.5 are 17.4 A.
    expect(circuits([1000, 2000], 1, 0.5)).toMatchObject({ code: '#NUM!' });
    expect(circuits([1000, 1600], 1, 0.5)).toBe(2);
  });

  it('power factors are one, or one for each', () => {
    expect(circuits([1000, 1000, 1000], 1, 1)).toEqual({
      code: '#VALUE!',
      message: 'CIRCUITSFOR: power_factors must be one, or one for each of the 3 loads, not 2.',
    });
  });

  it('a thousand are packed, and more are refused', () => {
    const list = (count: number) => Array.from({ length: count }, () => 3680);
    expect(circuits(list(1000), 1)).toBe(1000);
    expect(circuits(list(1001), 1)).toEqual({
      code: '#NUM!',
      message: 'CIRCUITSFOR: loads has 1001 fixtures; it packs at most 1000.',
    });
  });
});

describe('the fewest circuits', () => {
  it('are none where nothing draws', () => {
    expect(fewestCircuits([], 16)).toBe(0);
    expect(fewestCircuits([0, 0], 16)).toBe(0);
  });

  it('are found where the largest first would take one more', () => {
    // By hand: 6 + 4 and 5 + 5 and 3 + 4 + 3 of ten; the largest first leaves a 3 over.
    expect(fewestCircuits([6, 5, 5, 4, 4, 3, 3], 10)).toBe(3);
    expect(fewestCircuits([4, 4, 3, 3, 3, 3], 10)).toBe(2);
  });

  /** Each of the largest in turn goes to the first circuit with room, as anybody does it by hand. */
  function byHand(loads: readonly number[], capacity: number): number {
    const circuits: number[] = [];
    for (const load of [...loads].sort((a, b) => b - a)) {
      const free = circuits.findIndex((used) => used + load <= capacity);
      if (free < 0) circuits.push(load);
      else circuits[free] = circuits[free]! + load;
    }
    return circuits.length;
  }

  it('are those found by hand where patience ends before all ways are tried', () => {
    // Sixty different loads whose sum fills 27 circuits of 1000 almost to the last.
    let state = 1;
    const loads = Array.from({ length: 60 }, () => {
      state = (state * 48_271) % 2_147_483_647;
      return Math.round(200 + (state / 2_147_483_647) * 450);
    });
    const sum = loads.reduce((whole, load) => whole + load, 0);
    expect(Math.ceil(sum / 1000)).toBe(27);
    expect(byHand(loads, 1000)).toBe(28);
    expect(fewestCircuits(loads, 1000, 500)).toBe(28);
  });
});
