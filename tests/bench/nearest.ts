import { uvFromXY, uvOf, type UV } from '../../functions/colour/chromaticity.ts';
import { tristimulus } from '../../functions/colour/observer.ts';
import { planckian } from '../../functions/colour/planck.ts';

/** Ohno’s table and triangle, written down once more with nothing around it: no domain, no words. */
export function bareNearest(): (x: number, y: number) => { kelvin: number; duv: number } {
  const table = Array.from({ length: 1850 }, (_, index) => {
    const kelvin = 1000 * 1.0025 ** (index - 1);
    return { kelvin, ...uvOf(tristimulus((metres) => planckian(metres, kelvin))) };
  });
  const apart = (one: UV, other: UV) => Math.hypot(one.u - other.u, one.v - other.v);
  return (x, y) => {
    const point = uvFromXY({ x, y });
    let [best, least] = [0, Infinity];
    for (let index = 0; index < table.length; index += 1) {
      const { u, v } = table[index]!;
      const squared = (point.u - u) ** 2 + (point.v - v) ** 2;
      if (squared < least) [best, least] = [index, squared];
    }
    const [before, after] = [table[best - 1]!, table[best + 1]!];
    const [first, last, chord] = [apart(point, before), apart(point, after), apart(before, after)];
    const along = (first ** 2 - last ** 2 + chord ** 2) / (2 * chord);
    const side = point.v - (before.v + ((after.v - before.v) * along) / chord);
    return {
      kelvin: before.kelvin + ((after.kelvin - before.kelvin) * along) / chord,
      duv: Math.sqrt(Math.max(0, first ** 2 - along ** 2)) * Math.sign(side),
    };
  };
}
