import { expect, it } from 'vitest';
import { near } from '../../../functions/near.ts';

it('numbers are near to a share of 1e-12 of the greater, and to 1e-12 below one', () => {
  expect(near(1e6, 1e6 + 9e-7)).toBe(true);
  expect(near(1e6, 1e6 + 2e-6)).toBe(false);
  expect(near(0, 9e-13)).toBe(true);
  expect(near(0, 2e-12)).toBe(false);
  expect(near(-5, 5)).toBe(false);
});

it('to another share where one is given; to none, only a number itself is near', () => {
  expect(near(100, 101, 0.02)).toBe(true);
  expect(near(100, 103, 0.02)).toBe(false);
  expect(near(2, 2, 0)).toBe(true);
  expect(near(2, 2 + 1e-15, 0)).toBe(false);
});

it('nothing is near to what is no number', () => {
  expect(near(NaN, NaN)).toBe(false);
});
