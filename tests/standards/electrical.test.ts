import { describe, expect, it } from 'vitest';
import {
  AMPS,
  CIRCUITROOM,
  CIRCUITSFOR,
  HIRE,
  KVA,
  LOADSHARE,
  NEUTRALAMPS,
  VOLTDROP,
} from '../../functions/index.ts';
import { checkCases, number, refusal } from '../support/cases.ts';
import cases from './cases/electrical.json' with { type: 'json' };

const sections = [1.5, 2.5, 4, 6, 10, 16, 25, 35];

/** Ohm per kilometre at 20 °C: what one ampere loses over half a kilometre, out and back. */
function resistances(conductorClass: number): number[] {
  return sections.map((area) => number(VOLTDROP, 1, 500, area, 20, conductorClass));
}

function apparentAndReactive(watts: number, powerFactor: number): number[] {
  const apparent = number(KVA, watts, powerFactor);
  return [apparent, Math.sqrt(apparent ** 2 - watts ** 2)];
}

checkCases(
  'electrical',
  cases,
  {
    'electrical-001-amps-1ph': () => number(AMPS, 12_000, 230, 0.95),
    'electrical-003-amps-3ph': () => number(AMPS, 60_000, 400, 0.9, 3),
    'electrical-004-va': () => apparentAndReactive(4000, 0.6),
    'electrical-006-drop-class2': () => number(VOLTDROP, 32, 80, 6, 20, 2),
    'electrical-007-table': () => resistances(5),
    'electrical-008-table2': () => resistances(2),
    'electrical-015-neutral': () => number(NEUTRALAMPS, 30, 20, 10),
  },
  {
    'electrical-011-temp-393':
      'VOLTDROP takes the factors printed in IEC 60228, 250 / (230 + t), which at 70 °C give 1.2 and not the 1.1965 of a linear coefficient of 0.00393.',
  },
);

describe('conductor temperature (factors to 20 °C printed with IEC 60228, three decimals)', () => {
  const printed = [
    [5, 1.064],
    [10, 1.042],
    [15, 1.02],
    [20, 1],
    [25, 0.98],
    [30, 0.962],
    [35, 0.943],
    [40, 0.926],
    [50, 0.893],
    [60, 0.862],
    [70, 0.833],
    [80, 0.806],
    [90, 0.781],
  ] as const;

  it.each(printed)('at %d °C the factor is %d', (temperature, factor) => {
    const warm = number(VOLTDROP, 1, 500, 2.5, temperature);
    expect(Math.abs(7.98 / warm - factor)).toBeLessThanOrEqual(0.0005 + 1e-9);
  });
});

describe('conductor sections (IEC 60228, maximum resistance of plain copper at 20 °C)', () => {
  /** mm², class 2 and class 5 in ohm per kilometre; the smaller ones are among the cases. */
  const printed = [
    [0.5, 36, 39],
    [0.75, 24.5, 26],
    [1, 18.1, 19.5],
    [50, 0.387, 0.386],
    [70, 0.268, 0.272],
    [95, 0.193, 0.206],
    [120, 0.153, 0.161],
    [150, 0.124, 0.129],
    [185, 0.0991, 0.106],
    [240, 0.0754, 0.0801],
    [300, 0.0601, 0.0641],
    [400, 0.047, 0.0486],
    [500, 0.0366, 0.0384],
    [630, 0.0283, 0.0287],
  ] as const;

  it.each(printed)('%d mm²', (area, stranded, flexible) => {
    expect(number(VOLTDROP, 1, 500, area, 20, 2)).toBeCloseTo(stranded, 12);
    expect(number(VOLTDROP, 1, 500, area, 20, 5)).toBeCloseTo(flexible, 12);
  });

  it('a section that is not made is refused with those that are', () => {
    expect(refusal(VOLTDROP, 16, 50, 3)).toMatch(
      /area must be 0\.5, 0\.75, 1, .* or 630, not 3\.$/,
    );
  });
});

describe('circuits (common practice)', () => {
  it('a 16 A circuit at 230 V carries 2944 W for hours at 80 %', () => {
    expect(number(CIRCUITROOM, 0, 230, 16, 1, 0.8)).toBeCloseTo(2944, 9);
  });

  it('a fixture of 1200 W at a power factor of 0.6 fills a 20 A circuit at 120 V to five sixths', () => {
    expect(number(LOADSHARE, 1200, 120, 20, 0.6)).toBeCloseTo(5 / 6, 12);
  });

  it('the fewest circuits are found where putting the largest first takes one more', () => {
    // Of 10 each: 6+2+2 and 5+3+2. The largest first leaves 6+3, 5+2+2 and a 2 alone.
    const loads = { cells: [6, 5, 3, 2, 2, 2].map((value) => ({ value: value * 100 })) };
    expect(number(CIRCUITSFOR, loads, 100, 10, 1, 1)).toBe(2);
  });

  it('a fixture that no circuit carries is named', () => {
    expect(refusal(CIRCUITSFOR, 5000, 230, 16, 1)).toBe(
      'CIRCUITSFOR: loads has one of 5000 W, more than a whole circuit carries.',
    );
  });

  it('power factors are one for all or one for each', () => {
    const three = { cells: [{ value: 100 }, { value: 200 }, { value: 300 }] };
    const two = { cells: [{ value: 1 }, { value: 0.9 }] };
    expect(refusal(CIRCUITSFOR, three, 230, 16, two)).toBe(
      'CIRCUITSFOR: power_factors must be one, or one for each of the 3 loads, not 2.',
    );
  });
});

describe('hire (common practice: a week charged as three days)', () => {
  const printed = [
    [1, 1],
    [3, 3],
    [5, 3],
    [7, 3],
    [8, 4],
    [10, 6],
    [14, 6],
  ] as const;
  it.each(printed)('%d days are charged as %d', (days, charged) => {
    expect(number(HIRE, 1, days, 3)).toBe(charged);
  });
});
