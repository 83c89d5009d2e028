import { describe, expect, test } from 'vitest';
import { defaultWriting } from '../../../functions/quantities/settings.ts';
import type { Hand } from '../../../src/figures/figure.ts';
import { heldBack, snapped, stepOf } from '../../../src/panels/figures/place.ts';

const cell = { input: 'rig', row: 0, column: 1, words: 'x' };
const hand: Hand = {
  id: 'rig 0',
  name: 'Fresnel',
  at: [1.23, 2],
  cells: [cell, { ...cell, column: 2, words: 'y' }],
};
const fixed: Hand = { ...hand, cells: [{ ...cell, formula: 'B7' }, hand.cells[1]] };

describe('where a hand comes to rest', () => {
  test('on five centimetres, with care on one, in feet on two inches', () => {
    expect(snapped(hand, [1.274, 2.026], stepOf(defaultWriting, 'usual'))).toEqual([1.25, 2.05]);
    expect(snapped(hand, [1.274, 2.026], stepOf(defaultWriting, 'fine'))).toEqual([1.27, 2.03]);
    const feet = { ...defaultWriting, length: 'ft' } as const;
    // 25.4 mm to the inch, exactly.
    expect(stepOf(feet, 'usual')).toBeCloseTo(0.0508, 12);
  });

  test('what a formula works out stays, and its cell is named', () => {
    expect(snapped(fixed, [5, 5], 0.05)).toEqual([1.23, 5]);
    expect(heldBack(fixed)).toBe(
      'A formula works out x (B7) of Fresnel. Type a number there to move it by hand.',
    );
    expect(heldBack(hand)).toBeUndefined();
  });
});
