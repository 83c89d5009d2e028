import { describe, expect, it } from 'vitest';
import { outcomeInWords } from '../../../src/choose/pick/said.ts';
import { build } from '../../../templates/hire/plan.ts';

const { settings } = build().document;
const says = (cost: number, least: number) =>
  outcomeInWords(
    { settings },
    {
      kind: 'found',
      best: { counts: [], outputs: [], onCircuits: [], cost, least, proven: least >= cost },
    },
  );

describe('what is said of a set', () => {
  it('surely the cheapest only where that is proven, otherwise how far above the least it may be', () => {
    expect(says(460, 460)).toMatch(/460.00.*, surely the cheapest\.$/);
    // 460 / 400 is 15 % above; 460 / 399 is a little more, and is rounded up.
    expect(says(460, 400)).toMatch(
      /, the cheapest found; at most 15 % above the least possible\.$/,
    );
    expect(says(460, 399)).toMatch(/at most 16 % above/);
    expect(says(460, 0)).toMatch(/the best found in the time; there may be a cheaper one\.$/);
  });
});
