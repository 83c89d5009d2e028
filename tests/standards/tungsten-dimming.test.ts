import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/tungsten-dimming/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// Worked out by hand in templates/tungsten-dimming/expected.ts from the exponents of voltage that
// lighting handbooks give for incandescent lamps (from memory).

const sheet = openFilled('tungsten-dimming');

describe('a tungsten lamp dimmed', () => {
  comesToWhatItSays(sheet, expected);

  it('90 % of the voltage is 70 % of the light and 10 K lower a volt (rules of thumb, 120 V, from memory)', () => {
    const { type, valueOf } = openFilled('tungsten-dimming');
    type('A20', '70 %');
    expect(Math.abs(Number(valueOf('C20')) - (3200 - 10 * 12))).toBeLessThan(25);
  });

  it('a camera balanced for daylight finds every share far too warm', () => {
    const { type, valueOf } = openFilled('tungsten-dimming');
    type('D1', '5600 K');
    // 10⁶ / 3200 − 10⁶ / 5600 = 312.5 − 178.6
    expect(valueOf('E5')).toBe('134 mired too warm');
  });

  it('a camera set to the dimmed lamp finds it matching, and the full lamp too blue', () => {
    const { type, valueOf } = openFilled('tungsten-dimming');
    type('D1', '2937 K');
    expect(valueOf('E10')).toBe('matches');
    expect(valueOf('E5')).toBe('28 mired too blue');
  });

  it('a lamp that is warmer at full stays as many stops below', () => {
    const { type, valueOf } = openFilled('tungsten-dimming');
    type('B1', '2800 K');
    // 2800 · 0.91794
    expect(Number(valueOf('C10'))).toBeCloseTo(2570.2, 0);
  });
});
