import { describe, expect, it } from 'vitest';
import { everyNanometre } from '../../../../functions/colour/everyNanometre.ts';
import { observer } from '../../../../functions/colour/observer.ts';

/** A smooth curve of the fourth degree, which the interpolation must give exactly. */
const curve = (x: number) => 3 - 2 * x + x ** 2 / 4 - x ** 3 / 9 + x ** 4 / 50;
const everyFifth = Array.from({ length: 9 }, (_, index) => curve(index - 4));

describe('samples every nanometre', () => {
  it('keeps the samples it was given', () => {
    const fine = everyNanometre(everyFifth);
    expect(fine).toHaveLength(41);
    everyFifth.forEach((value, index) => expect(fine[5 * index]).toBeCloseTo(value, 12));
  });

  it('follows a curve of the fourth degree between them', () => {
    everyNanometre(everyFifth)
      .slice(10, 31)
      .forEach((value, index) => {
        expect(value).toBeCloseTo(curve((index + 10) / 5 - 4), 12);
      });
  });

  it('comes within 5e-5 of the observer printed at 1 nm', () => {
    // ISO/CIE 11664-1, table 1, ȳ at 1 nm, as carried by open source colour libraries.
    const printed = [
      [507, 0.444_309_6],
      [553, 0.999_112],
      [562, 0.989_742_6],
      [611, 0.490_468_8],
    ] as const;
    for (const [nm, value] of printed) {
      expect(Math.abs((observer.y[nm - 360] ?? 0) - value)).toBeLessThan(5e-5);
    }
  });
});
