import { describe, expect, it } from 'vitest';
import { expected } from '../../templates/camera/expected.ts';
import { comesToWhatItSays } from '../support/comes.ts';
import { openFilled } from '../support/filled.ts';

// The settings are invented; what they come to is worked out by hand in templates/camera/expected.ts
// from the exposure equations of ISO 2720.

const sheet = openFilled('camera');

describe('three cameras side by side', () => {
  comesToWhatItSays(sheet, expected);
});

describe('other settings typed in', () => {
  it('f/16 at ISO 125 and 1/125 s puts 3200 cd/m² at grey (worked example of ANSI PH3.49)', () => {
    const { type, valueOf } = openFilled('camera');
    type('B3', '125');
    type('B5', '1/125 s');
    type('B7', 'f/16');
    expect(valueOf('B15')).toBeCloseTo(3200, 9);
  });

  it.each([
    ['50 Hz', 'pulses by up to 0.1 stop; clean at 172.8°'],
    ['60 Hz', 'fixed bands of up to 0.4 stop; clean at 144°'],
  ])('24 frames at 180° on %s: %s (clean angles: common practice)', (mains, says) => {
    const { type, valueOf } = openFilled('camera');
    type('B4', '24');
    type('B24', mains);
    expect(valueOf('B25')).toBe(says);
  });

  it('a stop of filters halves the speed to meter at and doubles the light wanted', () => {
    const { type, valueOf } = openFilled('camera');
    type('B6', '1');
    expect(valueOf('B14')).toBe(400);
    expect(valueOf('B16')).toBeCloseTo(340, 9);
    expect(valueOf('C23')).toBe('1.64 stops less');
  });

  it('a T-number is taken as the stop', () => {
    const { type, valueOf } = openFilled('camera');
    type('D7', 'T2');
    expect(valueOf('D15')).toBeCloseTo(8, 9);
  });

  it('two cameras that want the same light say so', () => {
    const { type, valueOf } = openFilled('camera');
    type('C3', '1600');
    type('C5', '90°');
    expect(valueOf('C23')).toBe('as camera A');
  });
});
