import { describe, expect, it } from 'vitest';
import { daylightComponents } from '../../../../functions/data/daylightComponents.ts';
import { bell } from '../../../../functions/spectrum/exampleSpectra.ts';
import { lightOf } from '../../../../functions/spectrum/light.ts';
import { consistency } from '../../../../functions/spectrum/television.ts';
import { televisionOf } from '../../../accuracy/references/rendition.ts';

const lengths = Array.from({ length: 81 }, (_, index) => 380 + 5 * index);

/** What we make of a light and what the other way makes of it, both at a colour temperature. */
function both(power: (nm: number) => number, kelvin: number) {
  const values = lengths.map(power);
  const spectrum = { nanometres: Float64Array.from(lengths), values: Float64Array.from(values) };
  const { sampled } = lightOf({ ...spectrum, measures: 'shape' });
  return { ours: consistency(sampled, kelvin), other: televisionOf(values, kelvin) };
}

const lamps: readonly (readonly [string, (nm: number) => number, number])[] = [
  ['a phosphor white', (nm) => 0.9 * bell(450, 25)(nm) + bell(575, 130)(nm), 5200],
  ['one without red', (nm) => bell(450, 30)(nm) + bell(540, 60)(nm), 6500],
  ['three narrow bells', (nm) => bell(455, 20)(nm) + bell(530, 30)(nm) + bell(625, 20)(nm), 4300],
  ['the same, called warm', (nm) => bell(530, 30)(nm) + 2 * bell(625, 20)(nm), 2900],
  ['yellow, which clips some colours of the chart', (nm) => bell(590, 12)(nm), 2000],
];

// The standard is reckoned again with matrices in the other way (EBU Tech 3355, 1.1 to 1.5).
describe('the television index', () => {
  it.each(lamps)('of %s is what another way to it says', (_, power, kelvin) => {
    const { ours, other } = both(power, kelvin);
    expect(other).toBeGreaterThan(0);
    expect(ours).toBeCloseTo(other!, 6);
  });

  it('is a hundred for daylight of 5000 K: from there on the reference is daylight alone', () => {
    // D50 of the standard: M1 and M2 from x = 0.3457 (EBU Tech 3355, 1.1.2.2).
    const t = 1000 / 5000;
    const x = 0.244_063 + 0.099_11 * t + 2.9678 * t ** 2 - 4.607 * t ** 3;
    const y = -3 * x ** 2 + 2.87 * x - 0.275;
    const parts = 0.023_87 + 0.255_39 * x - 0.732_17 * y;
    const m1 = (-1.346_74 - 1.778_61 * x + 5.907_57 * y) / parts;
    const m2 = (0.036_38 - 31.444_64 * x + 30.064 * y) / parts;
    const power = new Map(daylightComponents.map(([nm, a, b, c]) => [nm, a + m1 * b + m2 * c]));
    expect(both((nm) => power.get(nm) ?? Number.NaN, 5000).ours).toBeCloseTo(100, 9);
  });

  it('is none where the camera clips every colour', () => {
    expect(both((nm) => (nm === 640 ? 1 : 0), 1000).ours).toBeUndefined();
  });
});
