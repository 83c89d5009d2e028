import { describe, expect, it } from 'vitest';
import { colourVerdict } from '../../../../functions/colour/colourWords.ts';
import { verdictShape } from '../../../../functions/stops/verdictWords.ts';

describe('a colour in words', () => {
  it.each([
    [92, 0.005, '92 mired too warm, green by 0.005', 'over'],
    [-168, -0.0041, '168 mired too blue, magenta by 0.004', 'under'],
    [12, 0.003, '12 mired too warm', 'over'],
    [0, 0.0123, 'green by 0.012', 'over'],
    [10, -0.02, 'magenta by 0.020', 'under'],
    [-10, -0.003, 'agrees', 'agrees'],
  ])('%d mired and Duv %d: %s', (mired, duv, words, shape) => {
    expect(colourVerdict(mired, duv, 10, 0.003)).toBe(words);
    expect(verdictShape(words)).toBe(shape);
  });

  it('what is smaller than a figure is never said as none', () => {
    expect(colourVerdict(0.3, -0.0004, 0, 0)).toBe('0.3 mired too warm, magenta by 0.0004');
  });
});
