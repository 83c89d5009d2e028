import { describe, expect, it } from 'vitest';
import { nearestOnLocus } from '../../../../functions/colour/nearestOnLocus.ts';
import { observer1931 } from '../../../../functions/data/observer1931.ts';

/**
 * The Planckian locus once more, apart from the functions: summed over the 5 nm table as it stands,
 * with c₂ = 1.4388e-2 m·K, in CIE 1960 u, v.
 */
function locus(kelvin: number): readonly [u: number, v: number] {
  let [X, Y, Z] = [0, 0, 0];
  for (const [nm, x, y, z] of observer1931) {
    const power = nm ** -5 / (Math.exp(1.4388e7 / (nm * kelvin)) - 1);
    X += power * x;
    Y += power * y;
    Z += power * z;
  }
  return [(4 * X) / (X + 15 * Y + 3 * Z), (6 * Y) / (X + 15 * Y + 3 * Z)];
}

/** The nearest temperature by narrowing down, with no table and no parabola. */
function bruteForce(u: number, v: number, low: number, high: number): [number, number] {
  const away = (kelvin: number) => Math.hypot(locus(kelvin)[0] - u, locus(kelvin)[1] - v);
  while (high - low > 1e-4) {
    const [first, second] = [low + (high - low) / 3, high - (high - low) / 3];
    if (away(first) < away(second)) high = second;
    else low = first;
  }
  return [low, Math.sign(v - locus(low)[1]) * away(low)];
}

/** A point across the locus from a temperature. */
function aside(kelvin: number, duv: number): readonly [u: number, v: number] {
  const [u, v] = locus(kelvin);
  const [hotterU, hotterV] = locus(kelvin * 1.000_01);
  const length = Math.hypot(hotterU - u, hotterV - v);
  return [u + (duv * (hotterV - v)) / length, v - (duv * (hotterU - u)) / length];
}

const tints = [
  -0.03, -0.015, -0.006, -0.0021, -0.0019, -0.0003, 0, 1e-5, 0.0019, 0.0021, 0.01, 0.03,
];
const temperatures = [1500, 1873, 2400, 2700, 3200, 4100, 5003, 5600, 6504, 7700, 9300, 10_000];

describe('nearest point of the Planckian locus', () => {
  it.each(temperatures)('%d K: within 0.5 K and 1e-5 of a brute-force search', (kelvin) => {
    for (const tint of tints) {
      const [u, v] = aside(kelvin, tint);
      const [wanted, duv] = bruteForce(u, v, kelvin * 0.97, kelvin * 1.03);
      const found = nearestOnLocus({ u, v });
      expect(found, `Duv ${tint}`).toBeDefined();
      expect(Math.abs((found?.kelvin ?? 0) - wanted), `Duv ${tint}`).toBeLessThanOrEqual(0.5);
      expect(Math.abs((found?.duv ?? 0) - duv), `Duv ${tint}`).toBeLessThanOrEqual(1e-5);
    }
  });

  it.each([12_000, 15_500, 20_000])('%d K: within 5 K', (kelvin) => {
    for (const tint of tints) {
      const [u, v] = aside(kelvin, tint);
      const [wanted, duv] = bruteForce(u, v, kelvin * 0.9, kelvin * 1.1);
      const found = nearestOnLocus({ u, v });
      expect(Math.abs((found?.kelvin ?? 0) - wanted), `Duv ${tint}`).toBeLessThanOrEqual(5);
      expect(Math.abs((found?.duv ?? 0) - duv), `Duv ${tint}`).toBeLessThanOrEqual(1e-5);
    }
  });

  it('gives the point asked for where the triangle hands over to the parabola', () => {
    for (let tint = 0.001_98; tint < 0.002_02; tint += 2e-6) {
      const [u, v] = aside(3200, tint);
      expect(nearestOnLocus({ u, v })?.duv).toBeCloseTo(tint, 5);
    }
  });

  it('has no answer beyond the table', () => {
    const [u, v] = locus(700);
    expect(nearestOnLocus({ u, v })).toBeUndefined();
  });
});
