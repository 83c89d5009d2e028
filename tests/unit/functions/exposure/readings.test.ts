import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import type { AnyDefinition } from '../../../../functions/define.ts';
import { EXPOSURETIME, READINGF, READINGLUX, SHUTTERANGLE } from '../../../../functions/index.ts';
import { isError, type Argument } from '../../../../functions/values.ts';
import { settings } from '../support/settings.ts';

/** The words that a cell shows, or what it gives. */
function shown(definition: AnyDefinition, ...args: readonly Argument[]) {
  const result = call(definition, args, settings);
  return isError(result) ? result.message : result;
}

describe('a reading of any kind as an f-number (ISO 2720: N² = t · E · S / C = t · L · S / K)', () => {
  it('in lux through the receptor named, however it is written', () => {
    // 85 · 800 / 50 / 340 = 4
    expect(shown(READINGF, '85 lx', 'dome', 800, '1/50 s')).toBeCloseTo(2, 12);
    expect(shown(READINGF, '62.5 lx', ' Flat ', 800, '1/50 s')).toBeCloseTo(2, 12);
  });

  it('in candela per square metre through the constant of the spot meter', () => {
    // 3.125 · 800 / 50 / 12.5 = 4
    expect(shown(READINGF, '3.125 cd/m2', 'spot', 800, '1/50 s')).toBeCloseTo(2, 12);
    expect(shown(READINGF, '3.5 cd/m2', 'spot', 800, '1/50 s', 340, 250, 14)).toBeCloseTo(2, 12);
  });

  it('in EV, brought to ISO 100: EV 6 at ISO 400 and 1/16 s is f/4', () => {
    // 2⁶ · 400 / 100 / 16 = 16
    expect(shown(READINGF, '6 EV', 'dome', 400, '1/16 s')).toBeCloseTo(4, 12);
    expect(shown(READINGF, '6 EV', 'spot', 100, '1/4 s')).toBeCloseTo(4, 12);
  });

  it('in lux needs a receptor', () => {
    expect(shown(READINGF, '85 lx', 'spot', 800, '1/50 s')).toBe(
      'An incident reading is taken with a dome or a flat receptor, not "spot".',
    );
  });
});

describe('a reading of any kind as lux', () => {
  it('in lux is what it is, whatever the meter was set to', () => {
    expect(shown(READINGLUX, '85 lx', 'flat', 3200, '1/8 s')).toBe(85);
    expect(shown(READINGLUX, '85 lx', 'spot', 100, '1/50 s')).toBe(85);
  });

  it('in f-numbers and in EV through the receptor: C · N² / (S · t)', () => {
    expect(shown(READINGLUX, 'f/2', 'dome', 800, '1/50 s')).toBeCloseTo(85, 10);
    expect(shown(READINGLUX, 'f/2', 'flat', 800, '1/50 s')).toBeCloseTo(62.5, 10);
    // The printed table: EV 3 is 20 lx, flat.
    expect(shown(READINGLUX, '3 EV', 'flat', 800, '1/50 s')).toBeCloseTo(20, 10);
  });

  it('cannot be told from a spot reading, nor without a receptor', () => {
    expect(shown(READINGLUX, '80 cd/m2', 'spot', 800, '1/50 s')).toMatch(
      /^A spot reading is light/,
    );
    expect(shown(READINGLUX, 'f/2', 'spot', 800, '1/50 s')).toMatch(/not "spot"\.$/);
    expect(shown(READINGLUX, '3 EV', 'spot', 800, '1/50 s')).toMatch(/not "spot"\.$/);
  });
});

describe('a shutter is open at most for a whole turn', () => {
  it('as an angle: 360° is a frame, more is refused', () => {
    expect(shown(EXPOSURETIME, '360°', 25)).toBe(1 / 25);
    expect(shown(EXPOSURETIME, '361°', 25)).toBe('A shutter angle is at most 360°, not 361°.');
  });

  it('as a time: a frame is right though its decimals are not, longer is refused', () => {
    expect(shown(EXPOSURETIME, '1/25 s', 25)).toBe(1 / 25);
    expect(shown(EXPOSURETIME, `${(1 + 5e-10) / 25} s`, 25)).toBeCloseTo(1 / 25, 9);
    expect(shown(EXPOSURETIME, '1/24 s', 25)).toMatch(/^A shutter cannot be open .* 25 frames/);
    expect(shown(EXPOSURETIME, '400 s', 0.001)).toBe(400);
  });

  it('and so is the angle of a time', () => {
    expect(shown(SHUTTERANGLE, (1 + 4e-13) / 24, 24)).toBeCloseTo(360, 9);
    expect(shown(SHUTTERANGLE, '1/24 s', 24)).toBe(360);
    expect(shown(SHUTTERANGLE, '1/20 s', 24)).toMatch(/one frame, 0\.0416/);
  });
});
