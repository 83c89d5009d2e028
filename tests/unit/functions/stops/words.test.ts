import { describe, expect, it } from 'vitest';
import {
  placementWords,
  stopsInWords,
  verdictShape,
  verdictWords,
} from '../../../../functions/stops/verdictWords.ts';

describe('an amount of stops as people say it', () => {
  it.each([
    [0, '0 stop'],
    [0.004, '0.004 stop'],
    [0.05, '0.05 stop'],
    [0.094, '0.09 stop'],
    [0.1, '0.1 stop'],
    [0.16, '0.2 stop'],
    [0.25, '1/4 stop'],
    [0.332, '1/3 stop'],
    [0.4, '0.4 stop'],
    [0.5, '1/2 stop'],
    [2 / 3, '2/3 stop'],
    [0.75, '3/4 stop'],
    [0.998, '1 stop'],
    [1, '1 stop'],
    [1.04, '1 stop'],
    [1.5, '1 1/2 stops'],
    [1.997, '2 stops'],
    [3.6, '3.6 stops'],
    [-1.25, '1 1/4 stops'],
  ])('%d is %s', (amount, words) => {
    expect(stopsInWords(amount)).toBe(words);
  });
});

describe('a verdict', () => {
  it('agrees at the very edge of the tolerance, either way, and not past it', () => {
    expect(verdictWords(0.25, 0.25)).toBe('agrees');
    expect(verdictWords(-0.25 - 5e-10, 0.25)).toBe('agrees');
    expect(verdictWords(0.2501, 0.25)).toBe('1/4 stop over');
    expect(verdictWords(-0.2501, 0.25)).toBe('1/4 stop under');
  });

  it('has a shape of its own; other texts have none', () => {
    expect(verdictShape('agrees')).toBe('agrees');
    expect(verdictShape('1/3 stop over')).toBe('over');
    expect(verdictShape('1/3 stop under')).toBe('under');
    expect(verdictShape('move the lamp')).toBeUndefined();
    expect(verdictShape('he agrees to it')).toBeUndefined();
  });
});

describe('a tone against what the camera holds', () => {
  it('is in range at either end, however the end was reckoned', () => {
    const hair = 5e-10;
    for (const tone of [6.5, 6.5 + hair, 0, -4.5, -4.5 - hair])
      expect(placementWords(tone, 6.5, 4.5)).toBe('in range');
  });

  it('clips or is lost past them, by as much as it lies past', () => {
    expect(verdictShape(placementWords(7.5, 6.5, 4.5))).toBe('clips');
    expect(verdictShape(placementWords(-6.5, 6.5, 4.5))).toBe('lost');
    expect(placementWords(7.5, 6.5, 4.5)).toContain('1 stop');
    expect(placementWords(-6.5, 6.5, 4.5)).toContain('2 stops');
    expect(verdictShape(placementWords(6.5 + 5e-9, 6.5, 4.5))).toBe('clips');
    expect(verdictShape(placementWords(-4.5 - 5e-9, 6.5, 4.5))).toBe('lost');
  });
});
