import { describe, expect, it } from 'vitest';
import { curveOf, stepOf, type Spectrum } from '../../../../functions/spectrum/spectrum.ts';

const spectrum = (readings: readonly (readonly [nm: number, value: number])[]): Spectrum => ({
  nanometres: Float64Array.from(readings, ([nm]) => nm),
  values: Float64Array.from(readings, ([, value]) => value),
  measures: 'shape',
});
const curve = (...readings: readonly (readonly [nm: number, value: number])[]) =>
  curveOf(spectrum(readings));

describe('between readings', () => {
  const coarse = () => curve([400, 1], [405, 3], [410, 2], [700, 8]);

  it('further apart than a nanometre the curve is straight', () => {
    expect(coarse()(400.5)).toBeCloseTo(1.2, 12);
    expect(coarse()(402.5)).toBeCloseTo(2, 12);
    expect(coarse()(407.5)).toBeCloseTo(2.5, 12);
    expect(coarse()(555)).toBeCloseTo(5, 12);
  });

  it('it may be asked back and forth, and is each reading where it was read', () => {
    expect([700, 405, 410, 400].map(coarse())).toEqual([8, 3, 2, 1]);
  });

  it('a nanometre apart it is straight too, from the first pair on', () => {
    const even = curve([400, 1], [401, 3], [402, 7], [403, 8]);
    expect(even(400.5)).toBeCloseTo(2, 12);
    expect(even(402.25)).toBeCloseTo(7.25, 12);
  });
});

describe('beyond the readings', () => {
  const short = () => curve([400, 5], [550, 1], [700, 3]);
  const long = () => curve([300, 5], [500, 1], [900, 3]);

  it('the last reading stands for what is missing of 380 to 780 nm', () => {
    expect([380, 399].map(short())).toEqual([5, 5]);
    expect([701, 780].map(short())).toEqual([3, 3]);
  });

  it('and then there is nothing', () => {
    expect([379, 781].map(short())).toEqual([0, 0]);
    expect([299, 901].map(long())).toEqual([0, 0]);
  });

  it('what was read further out is kept', () => {
    expect([300, 400].map(long())).toEqual([5, 3]);
    expect([800, 900].map(long())).toEqual([2.5, 3]);
  });
});

describe('closer than a nanometre', () => {
  // A line of light at 399.4 nm among readings at uneven distances.
  const readings = [
    [398, 2],
    [398.5, 10],
    [399.4, 100],
    [399.9, 3],
    [400.3, 5],
    [400.6, 20],
    [401, 50],
    [402, 80],
    [402.4, 60],
  ] as const;
  const dense = () => curve(...readings);

  /** A triangle of two nanometres, each reading with half the room to its neighbours on either side. */
  const mean = (nm: number) => {
    const parts = readings.map(([at, value], index) => {
      const room = (readings[index + 1]?.[0] ?? at) - (readings[index - 1]?.[0] ?? at);
      return { weight: Math.max(0, 1 - Math.abs(at - nm)) * room, value };
    });
    const whole = parts.reduce((sum, { weight }) => sum + weight, 0);
    return parts.reduce((sum, { weight, value }) => sum + weight * value, 0) / whole;
  };

  it('it is the mean about the place, so that no line falls between', () => {
    const byHand = (0.4 * 1.4 * 100 + 0.9 * 0.9 * 3 + 0.7 * 0.7 * 5 + 0.4 * 0.7 * 20) / 2.14;
    expect(dense()(400)).toBeCloseTo(byHand, 9);
    expect(dense()(401)).toBeCloseTo((0.3 * 0.7 * 5 + 0.6 * 0.7 * 20 + 1.4 * 50) / 2.03, 9);
  });

  it('near the ends it is the mean of what is there', () => {
    for (const nm of [398.1, 398.7, 401.5, 401.9]) expect(dense()(nm)).toBeCloseTo(mean(nm), 12);
    expect([398, 402.4].map(dense())).toEqual([2, 60]);
  });

  it('in a hole that is wider it is straight again', () => {
    const holed = curve([400, 1], [400.5, 1], [401, 1], [411, 6], [411.5, 6]);
    expect(holed(406)).toBeCloseTo(3.5, 12);
  });

  it('the step of a spectrum is the middle one of all', () => {
    expect(stepOf(spectrum([...readings]))).toBeCloseTo(0.5, 12);
    expect(stepOf(spectrum([[400, 1]]))).toBe(0);
  });
});
