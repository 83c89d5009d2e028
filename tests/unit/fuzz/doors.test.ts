import { afterEach, describe, expect, it } from 'vitest';
import { doors } from '../../fuzz/doors/all.ts';
import { runs } from '../../support/runs.ts';
import { chance, seed } from '../functions/support/chance.ts';

/** `npm run fuzz` asks for a hundred thousand, `npm run hard` for more. */
const times = Number(process.env['FUZZ'] ?? runs(2_500, 1_000_000));
const shares = doors.reduce((sum, { share }) => sum + share, 0);

let inputs = 0;

afterEach(() => {
  expect(Object.keys(Object.prototype), 'nothing was put on all objects').toEqual([]);
});

describe(`spoiled inputs at every door (SEED=${String(seed)})`, () => {
  it.for(doors)(
    '$name: each is taken whole or refused in a sentence',
    ({ name, share, takes, tried }, { task }) => {
      const next = chance(seed);
      const turns = Math.ceil((times * share) / shares);
      const counts = { taken: 0, refused: 0 };
      for (let turn = 0; turn < turns; turn += 1) {
        const { text, read, fault } = tried(next);
        expect(fault, `${name}: ${text}`).toBeUndefined();
        counts[read ? 'taken' : 'refused'] += 1;
      }
      inputs += turns;
      task.meta.measured = `${inputs.toLocaleString('en')} inputs`;
      if (process.env['FUZZ'])
        console.log(`${name}: ${String(counts.taken)} taken, ${String(counts.refused)} refused`);
      // Of few too few are taken to count.
      if (turns < 500) return;
      expect((counts.taken / turns) * 100).toBeGreaterThanOrEqual(takes);
      expect(counts.refused, 'some are refused').toBeGreaterThan(0);
    },
  );
});
