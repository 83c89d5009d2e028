import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import type { AnyDefinition } from '../../../../functions/define.ts';
import {
  FLICKERANGLE,
  FLICKERCHECK,
  FLICKERSTOPS,
  SUNALTITUDE,
} from '../../../../functions/index.ts';
import { keepsStep, nearestCleanAngle } from '../../../../functions/time/flicker.ts';
import { isError, type Argument } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

/** The words that a cell shows, or what it gives. */
function shown(definition: AnyDefinition, ...args: readonly Argument[]) {
  const result = call(definition, args, settings);
  return isError(result) ? result.message : result;
}

describe('a frame keeps step with the mains', () => {
  it('where it lasts for whole pulses, as nearly as rounding leaves it', () => {
    expect(keepsStep(25, 50)).toBe(true);
    // Four pulses less two billionths: rounding of a rate that was reckoned.
    expect(keepsStep(25 * (1 + 5e-10), 50)).toBe(true);
    expect(keepsStep(25.001, 50)).toBe(false);
  });

  it('and never where it is shorter than a pulse', () => {
    expect(keepsStep(250, 50)).toBe(false);
    expect(keepsStep(1e9, 50)).toBe(false);
  });
});

describe('an angle that is clean', () => {
  it('is the whole frame where that is a whole pulse, as nearly as rounding leaves it', () => {
    expect(nearestCleanAngle(50 * (1 + 5e-10), 50, 360)).toBeCloseTo(360, 6);
  });

  it('is none where the frame is too short, said by the count of pulses', () => {
    const short = (fps: number, pulses: string) =>
      `FLICKERANGLE: at ${fps} fps a frame is shorter than ${pulses} of the mains, so no shutter angle is clean.`;
    expect(shown(FLICKERANGLE, 200, 50)).toBe(short(200, 'one pulse'));
    expect(shown(FLICKERANGLE, 200, 50, 1)).toBe(short(200, 'one pulse'));
    // 25 frames a second hold four pulses of 50 Hz.
    expect(shown(FLICKERANGLE, 25, 50, 4)).toBe(360);
    expect(shown(FLICKERANGLE, 25, 50, 5)).toBe(short(25, '5 pulses'));
  });
});

describe('the flicker check', () => {
  it('takes a shutter that is open for the whole frame, and none longer', () => {
    expect(shown(FLICKERCHECK, '1/25', 25, 50)).toBe('clean');
    expect(shown(FLICKERCHECK, 1 / 24, 24, 50)).toMatch(/^pulses by /);
    expect(shown(FLICKERCHECK, 0.1, 25, 50)).toBe(
      'FLICKERCHECK: time must be no more than one frame, 0.04 s, not 0.1 s.',
    );
  });

  it('says no more than it can of a shutter that catches single moments', () => {
    expect(shown(FLICKERCHECK, 1e-6, 25, 50)).toBe(
      'fixed bands of more than 10 stops; clean at 90°',
    );
    expect(shown(FLICKERCHECK, 1e-12, 24, 50)).toBe('pulses by more than 10 stops; clean at 86.4°');
    expect(shown(FLICKERCHECK, 1e-3, 250, 50)).toMatch(/; no shutter is clean at this frame rate$/);
  });
});

describe('what is left of a flicker', () => {
  it('is a share from nothing to less than all', () => {
    const outside = (share: string) =>
      `FLICKERSTOPS: residue must be from 0 to less than 1, not ${share}.`;
    expect(shown(FLICKERSTOPS, 0)).toBe(0);
    expect(shown(FLICKERSTOPS, 1)).toBe(outside('1'));
    expect(shown(FLICKERSTOPS, -0.1)).toBe(outside('-0.1'));
  });
});

describe('days of the sun', () => {
  it('are those of 1900 to 2199, the first included', () => {
    const at = (day: number) => shown(SUNALTITUDE, day, 50, 10);
    const message = (day: number) =>
      `SUNALTITUDE: when must be a date from 1900 to 2199, not ${day}.`;
    // Day 2 of a spreadsheet is the first of January 1900, day 109575 that of 2200.
    expect(typeof at(2)).toBe('number');
    expect(Number(at(2))).toBeLessThan(0);
    expect(typeof at(109_574.99)).toBe('number');
    expect(at(1.99)).toBe(message(1.99));
    expect(at(109_575)).toBe(message(109_575));
  });
});
