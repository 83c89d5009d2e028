import { describe, expect, it } from 'vitest';
import { call } from '../../../../functions/call.ts';
import { GREENCC } from '../../../../functions/index.ts';
import { greenSurplus } from '../../../../functions/colour/greenBlock.ts';
import { observer1931 } from '../../../../functions/data/observer1931.ts';
import { usual } from '../../../../functions/usual.ts';

const step = 0.1;

/** Straight between the observer’s entries, at a wavelength in nanometres. */
function observerAt(nm: number): readonly [number, number, number] {
  const index = Math.floor((nm - 360) / 5);
  const [from, , ,] = observer1931[index]!;
  const share = (nm - from) / 5;
  const at = (column: 1 | 2 | 3) =>
    observer1931[index]![column] * (1 - share) + observer1931[index + 1]![column] * share;
  return [at(1), at(2), at(3)];
}

/** u, v of a black body whose light from 500 to 600 nm is so many times as strong, in fine steps. */
function chromaticity(kelvin: number, green: number): readonly [u: number, v: number] {
  let [X, Y, Z] = [0, 0, 0];
  for (let index = 0; index < 470 / step; index += 1) {
    const nm = 360 + (index + 0.5) * step;
    const [x, y, z] = observerAt(nm);
    const power = 1 / ((nm / 500) ** 5 * Math.expm1(1.4388e7 / (nm * kelvin)));
    const weight = power * (nm > 500 && nm < 600 ? green : 1);
    X += weight * x;
    Y += weight * y;
    Z += weight * z;
  }
  const sum = X + 15 * Y + 3 * Z;
  return [(4 * X) / sum, (6 * Y) / sum];
}

describe('a green third that is too strong', () => {
  it.each([
    [2700, 0.01],
    [3200, -0.012],
    [4300, 0.02],
    [5600, 0.006],
    [5600, -0.006],
  ])('at %d K lies just so far across the locus: Duv %d', (kelvin, duv) => {
    const [u, v] = chromaticity(kelvin, 1);
    const [warmU, warmV] = chromaticity(kelvin - 1, 1);
    const length = Math.hypot(u - warmU, v - warmV);
    const [greenU, greenV] = chromaticity(kelvin, greenSurplus(kelvin, duv));
    const [across, up] = [(v - warmV) / length, -(u - warmU) / length];
    // Across the locus, towards green: a shift of half a nanometre at one edge would show.
    expect(((greenU - u) * across + (greenV - v) * up) / duv).toBeCloseTo(1, 2);
    expect(Math.abs(((greenU - u) * across + (greenV - v) * up) / duv - 1)).toBeLessThan(0.002);
  });

  it('is as strong as it should be on the locus', () => {
    expect(greenSurplus(3200, 0)).toBe(1);
  });

  it('is more, or less, than any filter mends on a low flame far off the locus', () => {
    const said = (kelvin: number, duv: number) => call(GREENCC, [kelvin, duv], usual);
    expect(said(1700, 0.03)).toEqual({
      code: '#NUM!',
      message: 'GREENCC: at 1700 K no filter reaches Duv 0.03.',
    });
    expect(said(1700, -0.05)).toMatchObject({ code: '#NUM!' });
    expect(said(3200, 0.03)).toBeTypeOf('number');
  });
});
