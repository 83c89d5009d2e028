import { expect, test } from 'vitest';
import { widthInView } from '../../../src/app/widths.ts';

const phone = 390;
const shown = (sizes: readonly number[], frozen: number, wide = phone) =>
  sizes.map((_, column) => widthInView((at) => sizes[at], column, frozen, wide));

test('where there is room a column is as wide as it is meant to be', () => {
  expect(shown([520, 150], 0, 1280)).toEqual([520, 150]);
  expect(widthInView(() => undefined, 3, 0, 1280)).toBe(96);
});

test('on a phone the answers of an exercise stand in view beside its questions', () => {
  const [questions = 0, answers = 0] = shown([520, 150, 24], 0);
  expect(44 + questions + answers).toBeLessThanOrEqual(phone);
  expect(answers).toBe(150);
});

test('on a phone frozen names leave room for a verdict beside them', () => {
  const [names = 0, , verdict = 0] = shown([230, 84, 190], 1);
  expect(names).toBe(148);
  expect(verdict).toBe(190);
  expect(44 + names + verdict).toBeLessThanOrEqual(phone);
});

test('several frozen columns keep their proportion, and their widths where they fit', () => {
  expect(shown([84, 96, 116], 2)).toEqual([84, 96, 116]);
  const [scene = 0, setUp = 0] = shown([168, 192, 116], 2);
  expect(setUp / scene).toBeCloseTo(192 / 168, 1);
  expect(scene + setUp).toBeLessThanOrEqual(phone / 2 + 1);
});
