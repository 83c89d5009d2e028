import { describe, expect, it } from 'vitest';
import {
  CLOSEUPSTOPS,
  EIAFTER,
  EV,
  EVLUMINANCE,
  EVLUX,
  FACTORSTOPS,
  FSTOPS,
  GREYSTOPS,
  INCIDENTF,
  INCIDENTLUX,
  LEVELAT,
  LUMINANCEEV,
  LUMINANCEOF,
  LUXEV,
  REFLECTANCEOF,
  SHUTTERANGLE,
  SHUTTERTIME,
  SPOTF,
  SPOTLUMINANCE,
  STOPFACTOR,
} from '../../functions/index.ts';
import { checkCases, number } from '../support/cases.ts';
import cases from './cases/exposure.json' with { type: 'json' };

function lightAt(ev: number): number[] {
  return [number(EVLUMINANCE, ev), number(EVLUX, ev)];
}

/** Where a spot meter and an incident meter agree: a surface metered by both at EV 0. */
function agreeingReflectance(k: number): number {
  return number(REFLECTANCEOF, number(EVLUMINANCE, 0, k), number(EVLUX, 0, 'flat'));
}

/** Stops by which a grey card spot-meters over the incident reading of the same light. */
function cardOverIncident(reflectance: number): number {
  const spot = number(LUMINANCEEV, number(LUMINANCEOF, 1000, reflectance));
  return spot - number(LUXEV, 1000, 'flat');
}

checkCases('exposure', cases, {
  'exposure-001-ev-4-L-E': () => lightAt(-4),
  'exposure-002-ev0-L-E': () => lightAt(0),
  'exposure-003-ev3-L-E': () => lightAt(3),
  'exposure-006-ev12-L-E': () => lightAt(12),
  'exposure-007-ev15-L-E': () => lightAt(15),
  'exposure-010-ev-def': () => number(EV, 8, 0.008),
  // Shutter times are taken as written, so the 1/128 behind the mark 1/125 is written.
  'exposure-011-ev-15': () => number(EV, 16, 1 / 128),
  // EV is brought to ISO 100; a meter set to ISO 800 shows three more.
  'exposure-012-ev-iso': () => number(LUMINANCEEV, 100) + number(FACTORSTOPS, 800 / 100),
  'exposure-013-L-sunny16': () => number(SPOTLUMINANCE, 16, 0.008, 125),
  'exposure-015-E-needed-dome': () =>
    number(INCIDENTLUX, 2.8284271247461903, 500, number(SHUTTERTIME, 180, 24), 'dome'),
  'exposure-024-shutter-23976': () => number(SHUTTERTIME, 180, 23.976),
  'exposure-025-angle-from-time': () => number(SHUTTERANGLE, 0.01, 30),
  'exposure-026-ei-filter': () => number(EIAFTER, 500, 2 / 3),
  'exposure-027-ei-factor': () => number(EIAFTER, 800, number(FACTORSTOPS, 4)),
  'exposure-030-bellows-mag': () => number(STOPFACTOR, number(CLOSEUPSTOPS, 0.2032 / 0.3048)),
  'exposure-032-R-12.5-250': () => agreeingReflectance(12.5),
  'exposure-033-R-14-250': () => agreeingReflectance(14),
  'exposure-036-grey-vs-incident': () => cardOverIncident(0.18),
  'exposure-037-below-above-grey': () =>
    [-3, 2.473931188332412].map((stops) => number(LEVELAT, 0.18, stops)),
});

describe('exposure values at ISO 100 (printed tables, K = 12.5 and C = 250)', () => {
  /** EV, candela per square metre, footlamberts, lux, footcandles, each rounded as printed. */
  const printed = [
    [-4, 0.008, 0.0023, 0.156, 0.015],
    [0, 0.125, 0.036, 2.5, 0.232],
    [3, 1, 0.292, 20, 1.86],
    [12, 512, 149, 10_240, 951],
  ] as const;

  it.each(printed)('EV %d', (ev, nits, footlamberts, lux, footcandles) => {
    // Half a unit of the last digit printed is at most 3.2 % of these figures: 0.05 EV.
    expect(number(LUMINANCEEV, nits)).toBeCloseTo(ev, 1);
    expect(number(LUMINANCEEV, `${footlamberts} fL`)).toBeCloseTo(ev, 1);
    expect(number(LUXEV, lux)).toBeCloseTo(ev, 1);
    expect(number(LUXEV, `${footcandles} fc`)).toBeCloseTo(ev, 1);
  });

  it('f/16 at 1/125 s is EV 15', () => {
    expect(number(EV, 'f/16', '1/125')).toBeCloseTo(15, 1);
  });
});

describe('shutter (common practice)', () => {
  it('24 fps at 1/50 is a shutter of 172.8°', () => {
    expect(number(SHUTTERANGLE, '1/50', 24)).toBeCloseTo(172.8, 12);
    expect(number(SHUTTERTIME, '172.8°', 24)).toBeCloseTo(1 / 50, 15);
  });

  it('24 fps at 180° is 1/48', () => {
    expect(number(SHUTTERTIME, 180, 24)).toBeCloseTo(1 / 48, 15);
  });
});

describe('receptors (ISO 2720, constants from memory)', () => {
  it('dome and flat differ by 0.444 stop for the same lux', () => {
    const dome = number(INCIDENTF, 1000, 400, '1/50', 'dome');
    const flat = number(INCIDENTF, 1000, 400, '1/50', 'flat');
    expect(number(FSTOPS, flat, dome)).toBeCloseTo(0.444, 3);
  });

  it('the incident equation agrees with an 18 % card spotted, within the 0.2 stop of their constants', () => {
    const incident = number(INCIDENTF, 1000, 400, '1/50', 'flat');
    const card = number(SPOTF, number(LUMINANCEOF, 1000, 0.18), 400, '1/50');
    expect(number(FSTOPS, card, incident)).toBeCloseTo(0.197, 3);
    expect(number(GREYSTOPS, 0.18)).toBe(0);
  });
});
