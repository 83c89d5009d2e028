import { describe, expect, it } from 'vitest';
import BEAMANGLE from '../../functions/distance/BEAMANGLE.ts';
import BEAMCANDELA from '../../functions/distance/BEAMCANDELA.ts';
import BEAMDIAMETER from '../../functions/distance/BEAMDIAMETER.ts';
import CANDELALUX from '../../functions/distance/CANDELALUX.ts';
import DISCLUX from '../../functions/distance/DISCLUX.ts';
import FALLOFF from '../../functions/distance/FALLOFF.ts';
import FARFIELD from '../../functions/distance/FARFIELD.ts';
import FOOTCANDLES from '../../functions/distance/FOOTCANDLES.ts';
import FOOTLAMBERTS from '../../functions/distance/FOOTLAMBERTS.ts';
import INVERSESQUARE from '../../functions/distance/INVERSESQUARE.ts';
import INVERSESQUAREERROR from '../../functions/distance/INVERSESQUAREERROR.ts';
import LUX from '../../functions/distance/LUX.ts';
import LUXCANDELA from '../../functions/distance/LUXCANDELA.ts';
import NITS from '../../functions/distance/NITS.ts';
import PANELLUX from '../../functions/distance/PANELLUX.ts';
import { checkCases, number } from '../support/cases.ts';
import cases from './cases/photometry.json' with { type: 'json' };

const degrees = (radians: number) => (radians * 180) / Math.PI;

/** Illuminance on the floor from the same intensity in every direction, seen at a slant. */
function onTheFloor(candela: number, height: number, aside: number): number {
  return number(CANDELALUX, candela, Math.hypot(height, aside), degrees(Math.atan2(aside, height)));
}

/** Where `rising` passes zero, by halving: what a planner does with a row of trial values. */
function whereZero(rising: (x: number) => number, low: number, high: number): number {
  const middle = (low + high) / 2;
  if (high - low < 1e-9) return middle;
  return rising(middle) > 0 ? whereZero(rising, low, middle) : whereZero(rising, middle, high);
}

/** A lamp at (0, 0, 6) aimed at (3, 0, 0) with I = 10,000 cd · cos¹⁰ of the angle off its aim. */
function aimedLamp(): number {
  const distance = Math.hypot(4, 1, 6);
  const offAim = (3 * 4 + 6 * 6) / (Math.hypot(3, 6) * distance);
  return number(CANDELALUX, 10_000 * offAim ** 10, distance, degrees(Math.acos(6 / distance)));
}

checkCases(
  'photometry',
  cases,
  {
    'photometry-001-ex-1200lm': () => onTheFloor(number(BEAMCANDELA, 1200, 360), 8, 6),
    'photometry-002-ex-tenth': () =>
      whereZero((aside) => onTheFloor(1, 10, 0) / 10 - onTheFloor(1, 10, aside), 0, 100),
    'photometry-005-ex-45': () => number(CANDELALUX, 100, 2, 45),
    'photometry-009-ex-paper': () => onTheFloor(100, 4, 3),
    'photometry-013-inverse-square': () => number(INVERSESQUARE, 500, 3, 4.5),
    'photometry-015-aimed': aimedLamp,
    'photometry-016-disc-0.5-1': () => number(DISCLUX, 1000, 1, 1),
    'photometry-017-disc-0.25-5': () => number(DISCLUX, 1000, 0.5, 5),
    'photometry-021-rect-axis-1x1-1': () => number(PANELLUX, 1000, 1, 1, 1),
    'photometry-022-rect-axis-1.2x0.6-3': () => number(PANELLUX, 2000, 1.2, 0.6, 3),
    'photometry-028-five-times-square': () => 2 ** number(INVERSESQUAREERROR, 1, 1, 5) - 1,
    'photometry-030-beam-diameter': () => number(BEAMDIAMETER, 10, 25),
    'photometry-032-solid-angle': () =>
      [60, 180, 360].map((angle) => 1 / number(BEAMCANDELA, 1, angle)),
    'photometry-033-lm-to-cd-cone': () => number(BEAMCANDELA, 1000, 60),
    'photometry-034-cd-iso': () => 1 / number(BEAMCANDELA, 1, 360),
    'photometry-036-fc-lx': () => number(LUX, 1),
    'photometry-037-lx-fc': () => number(FOOTCANDLES, 500),
    'photometry-038-fL-nit': () => number(NITS, 1),
    'photometry-039-nit-fL': () => number(FOOTLAMBERTS, 48),
  },
  {
    'photometry-025-rect-perp':
      'The receiver stands at a right angle to the panel; PANELLUX is for one that is parallel to it.',
  },
);

describe('five-times rule (IES Lighting Handbook; error of the inverse square law)', () => {
  it('a disc from five times its diameter is 1.0 % off', () => {
    const promised = (1000 * Math.PI * 0.5 ** 2) / number(FARFIELD, 1) ** 2;
    expect(promised / number(DISCLUX, 1000, 1, number(FARFIELD, 1)) - 1).toBeCloseTo(0.01, 12);
  });

  it('a square from five times its side is 1.33 % off', () => {
    const share = 2 ** number(INVERSESQUAREERROR, 1, 1, number(FARFIELD, 1)) - 1;
    expect(share).toBeCloseTo(0.0133, 4);
  });

  it('from as far as its side a square is a third off', () => {
    // 4/√5 · atan 1/√5 = 0.75227 (table of configuration factors, times π).
    expect(2 ** number(INVERSESQUAREERROR, 1, 1, 1) - 1).toBeCloseTo(1 / 0.752_274_688_454 - 1, 9);
  });
});

describe('printed conversion factors (NIST SP 811, Appendix B.8)', () => {
  it('a footcandle is 1.076 391 E+01 lx', () => {
    expect(number(LUX, 1)).toBeCloseTo(10.763_91, 5);
  });

  it('a footlambert is 3.426 259 E+00 cd/m²', () => {
    expect(number(NITS, 1)).toBeCloseTo(3.426_259, 6);
  });
});

describe('on set (common practice)', () => {
  it('twice as far is two stops down', () => {
    expect(number(FALLOFF, '5 ft', '10 ft')).toBe(2);
  });

  it('distances on the f-number scale are a stop apart', () => {
    // 4 – 5.6 – 8 – 11 – 16 – 22 feet: rounded marks, 11 the worst by a twelfth of a stop.
    const marks = [4, 5.6, 8, 11, 16, 22];
    marks.slice(1).forEach((far, index) => {
      expect(Math.abs(number(FALLOFF, marks[index], far) - 1)).toBeLessThan(0.1);
    });
  });

  it('footcandles are candela over feet squared', () => {
    expect(number(FOOTCANDLES, number(CANDELALUX, '9000 cd', '30 ft'))).toBeCloseTo(10, 12);
    expect(number(LUXCANDELA, '10 fc', '30 ft')).toBeCloseTo(9000, 9);
  });

  it('a beam of 53 degrees is about as wide as its throw', () => {
    expect(number(BEAMANGLE, 5, 5)).toBeCloseTo(53.13, 2);
  });
});
