import { describe, expect, it } from 'vitest';
import { lightOf } from '../../../../functions/spectrum/light.ts';
import { planckCurve } from '../../../../functions/spectrum/reference.ts';
import { kindOfReference } from '../../../../functions/spectrum/rendering.ts';
import { referenceOf, reportOf } from '../../../../functions/spectrum/report.ts';

const lengths = Float64Array.from({ length: 81 }, (_, index) => 380 + 5 * index);
const report = (power: (nm: number) => number) =>
  reportOf('Lamp', lightOf({ nanometres: lengths, values: lengths.map(power), measures: 'shape' }));

// CIE 13.3-1995, 5.2: Planckian light below 5000 K, daylight from there.
describe('the reference of a report', () => {
  it('is Planckian light below 5000 K, and daylight from there', () => {
    expect([4999, 5000, 5001].map(kindOfReference)).toEqual(['planck', 'daylight', 'daylight']);
    expect(referenceOf(report(planckCurve(3200)))?.kind).toBe('planck');
    expect(referenceOf(report(planckCurve(3200)))?.kelvin).toBeCloseTo(3200, 0);
    expect(referenceOf(report(planckCurve(9000)))?.kind).toBe('daylight');
  });

  it('is none for a light that is bluer than daylight or has no temperature', () => {
    expect(referenceOf(report(planckCurve(40_000)))).toBeUndefined();
    expect(referenceOf(report((nm) => (nm === 505 ? 1 : 0)))).toBeUndefined();
  });
});
