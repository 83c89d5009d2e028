import { describe, expect, it } from 'vitest';
import {
  EV,
  FACTORSTOPS,
  FCOMBINE,
  FEXACT,
  FKEYFILLRATIO,
  FLIGHTINGRATIO,
  FMARK,
  FNUMBERAT,
  FSTOPS,
  TNUMBER,
} from '../../functions/index.ts';
import { checkCases, number, type Case } from '../support/cases.ts';
import file from './cases/stops.json' with { type: 'json' };

const cases: readonly Case[] = file;

function marksOf(id: string): readonly number[] {
  return cases.find((one) => one.id === id)?.inputs['nominal_marks'] as readonly number[];
}

checkCases('stops', cases, {
  'stops-004-half-series': () =>
    marksOf('stops-004-half-series').map((mark) => number(FEXACT, mark, 2)),
  'stops-005-snap-5.6-full': () => number(FEXACT, 5.6, 1),
  'stops-007-snap-11-full': () => number(FEXACT, 11, 1),
  'stops-008-snap-22-full': () => number(FEXACT, 22, 1),
  'stops-013-snap-1.2-third': () => number(FEXACT, 1.2, 3),
  'stops-014-snap-1.2-half': () => number(FEXACT, 1.2, 2),
  'stops-016-snap-0.7-full': () => number(FEXACT, 0.7, 1),
  // Shutter times are taken as written, so the two powers of two are written.
  'stops-019-shutter-nominal': () => number(FACTORSTOPS, 1 / 128 / (1 / 64)),
  'stops-021-combine-two-equal': () => number(FCOMBINE, 8, 8),
  'stops-022-combine-56-4': () => number(FCOMBINE, 5.6, 4),
  'stops-023-combine-three': () => number(FCOMBINE, 8, 5.6, 2.8),
  'stops-025-ratio': () => [number(FKEYFILLRATIO, 5.6, 2.8), number(FLIGHTINGRATIO, 5.6, 2.8)],
  'stops-026-fraction': () => number(FNUMBERAT, 5.6, 0.7),
  'stops-028-t-stop': () => number(TNUMBER, 2.8284271247461903, 0.8),
});

describe('f-number scales (ISO 517 for whole and third stops, from memory)', () => {
  const wholeStops = [1, 1.4, 2, 2.8, 4, 5.6, 8, 11, 16, 22, 32];
  const thirds = [
    [2, 2.2, 2.5, 2.8],
    [2.8, 3.2, 3.5, 4],
    [4, 4.5, 5, 5.6],
    [5.6, 6.3, 7.1, 8],
    [8, 9, 10, 11],
    [11, 13, 14, 16],
  ];

  it.each(wholeStops.slice(1).map((mark, index) => [wholeStops[index], mark]))(
    'between f/%d and f/%d lies exactly one stop',
    (lower, upper) => {
      expect(number(FSTOPS, upper, lower)).toBeCloseTo(1, 12);
    },
  );

  it.each(thirds)('f/%d, f/%d, f/%d and f/%d are a third of a stop apart', (...marks) => {
    for (const [index, mark] of marks.slice(1).entries()) {
      expect(number(FSTOPS, mark, marks[index])).toBeCloseTo(1 / 3, 12);
    }
  });

  it('from f/2.8 to f/11 is four stops on the scale, not the 3.948 of the printed numbers', () => {
    expect(number(FSTOPS, 11, 2.8)).toBeCloseTo(4, 12);
    expect(2 * Math.log2(11 / 2.8)).toBeCloseTo(3.948, 3);
  });
});

describe('on set (common practice)', () => {
  it('a background two stops under a 2.8 reading meters 1.4', () => {
    const background = number(FNUMBERAT, 'f/2.8', -2);
    expect(background).toBeCloseTo(number(FEXACT, 1.4), 12);
    expect(number(FMARK, background)).toBe(1.4);
  });

  it('f/5 at ISO 640 becomes f/8 at ISO 1600', () => {
    const stop = number(FNUMBERAT, 'f/5', number(FACTORSTOPS, 1600 / 640));
    expect(number(FMARK, stop)).toBe(8);
    // 640 to 1600 is 1.32 stops and f/5 to f/8 is 1 1/3: the speeds are rounded names.
    expect(number(FSTOPS, stop, 'f/8')).toBeCloseTo(0, 1);
  });

  it('four stops of neutral density bring f/8 to f/2', () => {
    expect(number(FNUMBERAT, 'f/8', -4)).toBeCloseTo(2, 12);
  });

  it('f/2.2 becomes f/3.2 with one stop more speed', () => {
    const stop = number(FNUMBERAT, 'f/2.2', number(FACTORSTOPS, 1600 / 800));
    expect(stop).toBeCloseTo(number(FEXACT, 3.2), 12);
    expect(number(FMARK, stop)).toBe(3.2);
  });

  it('one stop of light is one mark of the lens, half the time or twice the speed', () => {
    const setting = number(EV, 'f/4', '1/60', 400);
    expect(number(EV, 'f/5.6', '1/60', 400)).toBeCloseTo(setting + 1, 12);
    expect(number(EV, 'f/4', '1/120', 400)).toBeCloseTo(setting + 1, 12);
    expect(number(EV, 'f/4', '1/60', 200)).toBeCloseTo(setting + 1, 12);
  });
});
