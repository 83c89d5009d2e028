import { describe, expect, it } from 'vitest';
import {
  FLICKERANGLE,
  FLICKERBEAT,
  FLICKERCHECK,
  FLICKERRESIDUE,
  FLICKERSTOPS,
  FLICKERTIME,
  SHUTTERTIME,
} from '../../functions/index.ts';
import { checkCases, inCell, number, refusal } from '../support/cases.ts';
import cases from './cases/flicker.json' with { type: 'json' };

function countTo(last: number): number[] {
  return Array.from({ length: last }, (_, index) => index + 1);
}

function cleanAngles(fps: number, mains: number): number[] {
  const most = Math.floor((2 * mains) / fps);
  return countTo(most).map((n) => number(FLICKERANGLE, fps, mains, n));
}

/** Rates at which any shutter is steady from frame to frame: a shutter that is not clean tells. */
function steadyRates(mains: number, most: number): number[] {
  return countTo(most).filter((fps) => number(FLICKERRESIDUE, 0.37 / fps, mains, 1, fps) === 0);
}

function residueAndStops(time: number, mains: number): number[] {
  const residue = number(FLICKERRESIDUE, time, mains);
  return [residue, number(FLICKERSTOPS, residue)];
}

checkCases(
  'flicker',
  cases,
  {
    'flicker-002-times-60': () => countTo(4).map((n) => number(FLICKERTIME, 60, n)),
    'flicker-004-angles-24-50': () => cleanAngles(24, 50),
    'flicker-005-angles-24-60': () => cleanAngles(24, 60),
    'flicker-007-beat-25-60': () => number(FLICKERBEAT, 25, 60),
    'flicker-009-ripple-sin2-50-60': () => residueAndStops(1 / 60, 50),
    'flicker-012-ripple-sin2-50-50': () => residueAndStops(1 / 50, 50),
  },
  {
    'flicker-006-safe-fps-60':
      'A list printed as whole numbers, tested below: its tolerance of nothing fits no comparison of numbers.',
    'flicker-013-ripple-abs_sin-50-60':
      'FLICKERRESIDUE states its source, 1 + m·cos; a rectified sine has harmonics above the first.',
  },
);

describe('frame rates that keep step', () => {
  it('with 60 Hz are those that divide 120 (printed among cinematographers)', () => {
    const printed = cases.find(({ id }) => id === 'flicker-006-safe-fps-60')?.expected;
    expect(printed).toHaveLength(15);
    expect(steadyRates(60, 60)).toEqual(printed);
  });
});

describe('the residue against a sum over the exposure', () => {
  /** (max − min) / (max + min) of exposures of 1 + m·cos(2π·2f·t), by adding up small slices. */
  function summed(time: number, mains: number, modulation: number): number {
    const slices = 2000;
    const exposures = Array.from({ length: 400 }, (_, start) => {
      const begin = start / 400 / (2 * mains);
      let sum = 0;
      for (let slice = 0; slice < slices; slice += 1) {
        const moment = begin + ((slice + 0.5) / slices) * time;
        sum += 1 + modulation * Math.cos(4 * Math.PI * mains * moment);
      }
      return sum;
    });
    const [low, high] = [Math.min(...exposures), Math.max(...exposures)];
    return (high - low) / (high + low);
  }

  it.each([
    [1 / 48, 50, 1],
    [1 / 60, 50, 0.4],
    [1 / 1000, 60, 1],
    [1 / 30, 50, 0.9],
  ])('%d s at %d Hz, swinging by %d', (time, mains, modulation) => {
    // 400 starts miss the very peak by at most 1 − cos(π/400), 3e-5 of the swing.
    const sum = summed(time, mains, modulation);
    expect(Math.abs(number(FLICKERRESIDUE, time, mains, modulation) - sum)).toBeLessThan(5e-5);
  });
});

describe('warnings (common practice)', () => {
  it('25 fps at 180° on 50 Hz and 24 fps at 172.8° need none', () => {
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 180, 25), 25, 50)).toBe('clean');
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 172.8, 24), 24, 50)).toBe('clean');
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 172.8, 23.976), 23.976, 50)).toBe('clean');
  });

  it('24 fps at 180° on 50 Hz does, and 172.8° is offered', () => {
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 180, 24), 24, 50)).toBe(
      'pulses by up to 0.1 stop; clean at 172.8°',
    );
  });

  it('30 fps at 180° on 60 Hz is clean, at 135° it may show fixed bands', () => {
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 180, 30), 30, 60)).toBe('clean');
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 135, 30), 30, 60)).toMatch(
      /^fixed bands of up to .* stop; clean at 90°$/,
    );
  });

  it('at 240 fps on 50 Hz no shutter is clean', () => {
    expect(inCell(FLICKERCHECK, number(SHUTTERTIME, 180, 240), 240, 50)).toMatch(
      /^pulses by up to .* stops; no shutter is clean at this frame rate$/,
    );
    expect(refusal(FLICKERANGLE, 240, 50)).toMatch(/frame is shorter than one pulse/);
  });
});
