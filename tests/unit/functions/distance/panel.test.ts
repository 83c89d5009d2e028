import { describe, expect, it } from 'vitest';
import { panelDistance, panelFactor } from '../../../../functions/distance/panel.ts';

/** Nodes and weights of the eight-point Gauss–Legendre rule (Abramowitz and Stegun, table 25.4). */
const gauss = [
  [0.183_434_642_495_649_8, 0.362_683_783_378_362],
  [0.525_532_409_916_329, 0.313_706_645_877_887_3],
  [0.796_666_477_413_626_7, 0.222_381_034_453_374_5],
  [0.960_289_856_497_536_2, 0.101_228_536_290_376_3],
].flatMap(([node = 0, weight = 0]) => [[node, weight] as const, [-node, weight] as const]);

/** ∫ of a smooth function, in panels of eight points. */
function integral(f: (x: number) => number, low: number, high: number, pieces: number): number {
  const half = (high - low) / pieces / 2;
  let sum = 0;
  for (let piece = 0; piece < pieces; piece++) {
    const middle = low + (2 * piece + 1) * half;
    for (const [node, weight] of gauss) sum += weight * half * f(middle + node * half);
  }
  return sum;
}

/** cos · cos / r² summed over the face, with no closed form. */
function summed(width: number, height: number, distance: number, across: number, up: number) {
  const piece = (x: number, y: number) => distance ** 2 / (x ** 2 + y ** 2 + distance ** 2) ** 2;
  const pieces = 24;
  return integral(
    (x) => integral((y) => piece(x, y), up - height / 2, up + height / 2, pieces),
    across - width / 2,
    across + width / 2,
    pieces,
  );
}

describe('panel', () => {
  it.each([
    [1, 1, 1, 0, 0],
    [1.2, 0.6, 3, 0, 0],
    [2, 2, 0.3, 0, 0],
    [2, 1, 1, 1.5, 0],
    [2, 1, 1, 1, 0.5],
    [2.4, 1.2, 0.8, -3, 2],
    [0.6, 0.6, 4, 5, -6],
    [12, 3, 2, 4, 1],
  ])('%d × %d m from %d m, %d across and %d up, equals the sum over the face', (...at) => {
    const exact = summed(...at);
    expect(Math.abs(panelFactor(...at) - exact)).toBeLessThanOrEqual(1e-12 * Math.max(1, exact));
    expect(panelFactor(...at) / exact).toBeCloseTo(1, 10);
  });

  it('far aside and small it keeps its digits', () => {
    const exact = summed(0.1, 0.1, 2, 30, 20);
    expect(panelFactor(0.1, 0.1, 2, 30, 20) / exact).toBeCloseTo(1, 9);
  });

  it('an endless face gives π from any distance', () => {
    expect(panelFactor(1e9, 1e9, 2)).toBeCloseTo(Math.PI, 8);
  });

  it.each([
    [1, 1, 1e-3],
    [1, 1, 1],
    [3, 0.2, 0.5],
    [0.1, 8, 40],
    [1, 1, 1000],
  ])('%d × %d m: the distance of %d m is found again to 1e-12', (width, height, distance) => {
    const found = panelDistance(width, height, panelFactor(width, height, distance));
    // Close to the face the light hardly changes: there the digits of the light are the limit.
    expect(Math.abs(found / distance - 1)).toBeLessThanOrEqual(distance < 0.01 ? 1e-9 : 1e-12);
  });

  it('a wanted level just below the face is found close to it', () => {
    const found = panelDistance(1, 1, Math.PI * (1 - 1e-9));
    expect(found).toBeGreaterThan(0);
    expect(panelFactor(1, 1, found)).toBeCloseTo(Math.PI * (1 - 1e-9), 12);
  });
});
