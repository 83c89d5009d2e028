import { describe, expect, it } from 'vitest';
import KELVIN from '../../functions/colour/KELVIN.ts';
import KELVINTHROUGH from '../../functions/colour/KELVINTHROUGH.ts';
import MIRED from '../../functions/colour/MIRED.ts';
import MIREDSHIFT from '../../functions/colour/MIREDSHIFT.ts';
import TUNGSTENKELVIN from '../../functions/colour/TUNGSTENKELVIN.ts';
import { checkCases, number, refusal } from '../support/cases.ts';
import cases from './cases/mired.json' with { type: 'json' };

checkCases('mired', cases, {
  'mired-001-5500K': () => number(MIRED, 5500),
  'mired-007-shift-3400-5500': () => number(MIREDSHIFT, 3400, 5500),
  'mired-008-shift-4000-3000': () => number(MIREDSHIFT, 4000, 3000),
  'mired-009-shift-7000-6000': () => number(MIREDSHIFT, 7000, 6000),
  'mired-011-shift-5500-3200': () => number(MIREDSHIFT, 5500, 3200),
  'mired-013-shift-2700-3200': () => number(MIREDSHIFT, 2700, 3200),
  'mired-017-stack': () => number(KELVINTHROUGH, number(KELVINTHROUGH, 3200, -131), -26),
  'mired-018-infinite': () => number(MIRED, 3200) - 320,
  'mired-019-decamired': () => number(MIRED, 3200) / 10,
  'mired-020-mired-to-K': () => number(KELVIN, 179),
});

describe('printed mired values (photographic dictionaries and encyclopaedias)', () => {
  it.each([
    [2000, 500],
    [3200, 313],
    [3400, 294],
    [4000, 250],
    [5500, 182],
    [5600, 179],
    [6500, 154],
    [10_000, 100],
  ])('%d K is %d mired', (kelvin, mired) => {
    expect(Math.round(number(MIRED, kelvin))).toBe(mired);
  });

  it('500 K apart is more at the warm end', () => {
    expect(number(MIREDSHIFT, 3000, 2500)).toBeCloseTo(66.7, 1);
    expect(number(MIREDSHIFT, 6500, 6000)).toBeCloseTo(12.8, 1);
  });
});

describe('on set (common practice)', () => {
  it('daylight to tungsten warms, tungsten to daylight cools', () => {
    expect(number(MIREDSHIFT, '5600 K', '3200 K')).toBeCloseTo(133.9, 1);
    expect(number(MIREDSHIFT, '3200 K', '5600 K')).toBeCloseTo(-133.9, 1);
  });

  it('a shift past zero mired is refused and says how far', () => {
    expect(refusal(KELVINTHROUGH, 3200, -320)).toContain('-7.5 mired');
  });

  it('a colour temperature of nothing is refused with what is allowed', () => {
    expect(refusal(MIRED, 0)).toContain('kelvin must be more than zero');
  });
});

describe('dimmed tungsten (IES Lighting Handbook, exponents 3.4 and 0.42 of the voltage; from memory)', () => {
  it('at 90 % of the voltage 70 % of the light and 96 % of the colour temperature are left', () => {
    expect(0.9 ** 3.4).toBeCloseTo(0.7, 2);
    expect(number(TUNGSTENKELVIN, 3200, 0.9 ** 3.4) / 3200).toBeCloseTo(0.957, 3);
  });

  it('dimming by halves goes on by the same factor', () => {
    const down = number(TUNGSTENKELVIN, 3200, '50 %');
    expect(number(TUNGSTENKELVIN, down, '50 %')).toBeCloseTo(
      number(TUNGSTENKELVIN, 3200, '25 %'),
      9,
    );
  });
});
