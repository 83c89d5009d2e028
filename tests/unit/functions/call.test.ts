import { describe, expect, it } from 'vitest';
import { call, prepare, remarksOn } from '../../../functions/call.ts';
import {
  AGREES,
  EV,
  EVLUX,
  FCOMBINE,
  FEXACT,
  FILLFOR,
  FSTOPS,
  FTENTHS,
  INCIDENTF,
  INVERSESQUARE,
  SPOTF,
  STOPS,
  SPREAD,
} from '../../../functions/index.ts';
import { settings } from './support/settings.ts';

const whole = 2 ** 2.5;

describe('arguments left out', () => {
  it('have the default that the function states', () => {
    expect(call(EV, ['f/1', 1], settings)).toBe(0);
    expect(call(EV, ['f/1', 1, undefined], settings)).toBe(0);
    expect(call(EVLUX, [0], settings)).toBe(2.5);
  });

  it('have the setting of the book where it states one', () => {
    const flat = { ...settings, book: { ...settings.book, receptor: 250 } };
    expect(call(INCIDENTF, [340, 100, 1], settings)).toBe(10);
    expect(call(INCIDENTF, [250, 100, 1], flat)).toBe(10);
    const strict = { ...settings, book: { ...settings.book, tolerance: 0.1 } };
    expect(call(AGREES, [120, 100], settings)).toBe(true);
    expect(call(AGREES, [120, 100], strict)).toBe(false);
  });

  it('are asked for by name where there is no default', () => {
    expect(call(STOPS, [400], settings)).toEqual({
      code: '#VALUE!',
      message: 'STOPS needs reference.',
    });
  });

  it('are not the same as a blank cell, which is waited for', () => {
    expect(call(EVLUX, [0, { blank: true, at: 'Z9' }], settings)).toEqual({
      code: '#N/A',
      message: 'waiting for receptor (Z9)',
      waiting: true,
    });
  });
});

describe('too many arguments', () => {
  it('are counted', () => {
    const message = 'STOPS takes at most 2 arguments, not 3.';
    expect(call(STOPS, [1, 2, 3], settings)).toEqual({ code: '#VALUE!', message });
  });

  it('are welcome where the last one repeats', () => {
    expect(call(FCOMBINE, ['f/4', 'f/4', 8, 8], settings)).toBeCloseTo(Math.sqrt(160), 12);
  });
});

describe('marks', () => {
  it('5.6 means 2^(5/2), as a number and as a text', () => {
    expect(call(FEXACT, [5.6], settings)).toBe(whole);
    expect(call(FEXACT, ['5.6'], settings)).toBe(whole);
    expect(call(FEXACT, ['f/5.6'], settings)).toBe(whole);
    expect(call(FEXACT, [5.61], settings)).toBe(5.61);
  });

  it('in a range mean the same', () => {
    const cells = [
      { value: 5.6, at: 'A1' },
      { value: 2.8, at: 'A2' },
    ];
    expect(call(FCOMBINE, [{ cells }], settings)).toBeCloseTo(Math.sqrt(40), 12);
  });
});

describe('tenths', () => {
  it.each([1, 1.41, 2.9, 3.3, 4.35, 7.9, 11.4, 30])(
    'of f/%d are read back as they were said',
    (n) => {
      const said = call(FTENTHS, [n], settings);
      const off = call(FSTOPS, [said, n], settings);
      expect(Math.abs(Number(off))).toBeLessThanOrEqual(0.05 + 1e-9);
    },
  );
});

describe('ranges', () => {
  const row = (...values: (number | string | boolean | null)[]) => ({
    cells: values.map((value, index) => ({
      value: value ?? ({ blank: true } as const),
      at: `B${index + 1}`,
    })),
  });

  it('skip blank cells', () => {
    expect(call(SPREAD, [row(100, null, 400)], settings)).toBe(2);
  });

  it('name the place of a text', () => {
    expect(call(SPREAD, [row(100, 'n/a')], settings)).toEqual({
      code: '#VALUE!',
      message: 'SPREAD: levels has the text "n/a" in B2, where a number is wanted.',
    });
  });

  it('name the place of a number outside the domain', () => {
    expect(call(SPREAD, [row(100, -5)], settings)).toEqual({
      code: '#NUM!',
      message: 'SPREAD: levels must be more than zero, not -5 (B2).',
    });
    expect(call(SPREAD, [row(100, 0)], settings)).toEqual({
      code: '#NUM!',
      message: 'no light at levels (B2)',
      quiet: true,
    });
  });

  it('of one cell stand for that cell where one value is wanted, of more they are refused', () => {
    expect(call(STOPS, [row(400), 100], settings)).toBe(2);
    expect(call(STOPS, [row(400, 200), 100], settings)).toEqual({
      code: '#VALUE!',
      message: 'STOPS: level takes one cell, not a range.',
    });
  });

  it('as long as a sheet are read', () => {
    const cells = Array.from({ length: 200_000 }, (_, index) => ({
      value: 100 + (index % 2) * 100,
    }));
    expect(call(SPREAD, [{ cells }], settings)).toBe(1);
  });
});

describe('levels', () => {
  it('may be any light, of one kind', () => {
    expect(call(STOPS, ['4 kcd', '1 kcd'], settings)).toBe(2);
    expect(call(STOPS, ['10 fc', 53.819552083548426], settings)).toBeCloseTo(1, 12);
    expect(call(FILLFOR, ['40 fc', 4], settings)).toBeCloseTo(10 / 0.3048 ** 2, 10);
  });

  it('of two kinds are not held against each other', () => {
    expect(call(STOPS, ['250 lx', '80 cd/m2'], settings)).toEqual({
      code: '#VALUE!',
      message: 'STOPS: reference must be illuminance like level, not luminance.',
    });
  });
});

describe('errors', () => {
  const broken = { code: '#REF!', message: 'The cell is gone.' } as const;
  const waiting = { code: '#N/A', message: 'waiting for key (B4)', waiting: true } as const;

  it('that are broken come before those that only wait', () => {
    expect(call(STOPS, [waiting, broken], settings)).toBe(broken);
    expect(call(STOPS, [{ blank: true }, 'red'], settings)).toMatchObject({ code: '#VALUE!' });
  });

  it('say when a result is too large to be a number', () => {
    expect(call(INVERSESQUARE, [1e300, 1e10, 1], settings)).toEqual({
      code: '#NUM!',
      message: 'INVERSESQUARE: the result is too large or has no value.',
    });
  });
});

describe('a prepared function', () => {
  it('is made once, and gives what a call gives', () => {
    expect(prepare(FSTOPS)).toBe(prepare(FSTOPS));
    expect(prepare(FSTOPS)([5.6, 4], settings)).toBe(call(FSTOPS, ['f/5.6', 'f/4'], settings));
  });

  it('never shows -0', () => {
    expect(Object.is(call(INVERSESQUARE, [-0, 2, 4], settings), 0)).toBe(true);
    expect(Object.is(call(INVERSESQUARE, ['-0', 2, 4], settings), 0)).toBe(true);
  });
});

describe('constants that a standard would have otherwise (ISO 2720, from memory)', () => {
  it('are remarked on and not refused', () => {
    expect(call(SPOTF, [14, 100, 1, 14], settings)).toBe(10);
    expect(remarksOn(SPOTF, [14, 100, 1, 14], settings)).toEqual([
      'A constant of 14 is in use, but ISO 2720 recommends from 10.6 to 13.4.',
    ]);
    expect(remarksOn(EVLUX, [0, 200], settings)).toEqual([
      'A receptor of 200 is in use, but ISO 2720 recommends from 240 to 540.',
    ]);
  });

  it('are not remarked on within the recommendation, nor when the call fails', () => {
    expect(remarksOn(SPOTF, [14, 100, 1, 13.4], settings)).toEqual([]);
    expect(remarksOn(SPOTF, [14, 100, 1], settings)).toEqual([]);
    expect(remarksOn(EVLUX, [0, 'dome'], settings)).toEqual([]);
    expect(remarksOn(SPOTF, [-14, 100, 1, 14], settings)).toEqual([]);
  });
});
