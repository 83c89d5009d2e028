import { observer } from '../../../functions/colour/observer.ts';
import { Exact, type Exact as Digits } from '../decimal.ts';
import type { Chance, References } from '../measure.ts';

/** Second radiation constant as CIE 15 takes it, m·K. */
const c2 = '0.014388';

interface Point {
  readonly u: number;
  readonly v: number;
}

/** The observer every nanometre (its data is shared, the sums are not), in rows. */
const rows = observer.wavelengths.map((_, index) => ({
  nanometres: 360 + index,
  x: observer.x[index] ?? NaN,
  y: observer.y[index] ?? NaN,
  z: observer.z[index] ?? NaN,
}));

/** u, v (CIE 1960) of Planck’s law summed over the observer, with the power weighed by wavelength. */
function sumUp(kelvin: number, weigh = (_: number) => 1): Point {
  let [X, Y, Z] = [0, 0, 0];
  for (const { nanometres, x, y, z } of rows) {
    const exponent = Number(c2) / (nanometres * 1e-9 * kelvin);
    const power = (weigh(nanometres) * (nanometres / 555) ** -5) / (Math.exp(exponent) - 1);
    X += power * x;
    Y += power * y;
    Z += power * z;
  }
  return { u: (4 * X) / (X + 15 * Y + 3 * Z), v: (6 * Y) / (X + 15 * Y + 3 * Z) };
}

/** Green of the locus is on the side of larger v. */
export function across(kelvin: number, duv: number): Point {
  const [here, warm, cool] = [kelvin, kelvin * 0.9999, kelvin * 1.0001].map((t) => sumUp(t));
  if (!here || !warm || !cool) throw new Error('Three points were asked for.');
  const [du, dv] = [warm.u - cool.u, warm.v - cool.v];
  const length = Math.hypot(du, dv);
  return { u: here.u - (duv * dv) / length, v: here.v + (duv * du) / length };
}

const distance = (one: Point, other: Point) => Math.hypot(one.u - other.u, one.v - other.v);

const golden = (Math.sqrt(5) - 1) / 2;

/** The temperature at which the summed locus is nearest: narrowed by the golden section in mireds. */
export function nearest(point: Point): { kelvin: number; duv: number } {
  const away = (mired: number) => distance(point, sumUp(1e6 / mired));
  const coarse = Array.from({ length: 90 }, (_, index) => 20 * 1.045 ** index);
  const distances = coarse.map(away);
  const best = distances.indexOf(Math.min(...distances));
  let [low, high] = [coarse[best - 1] ?? 20, coarse[best + 1] ?? 1000];
  while (high - low > 1e-6) {
    const [left, right] = [high - golden * (high - low), low + golden * (high - low)];
    if (away(left) < away(right)) high = right;
    else low = left;
  }
  const kelvin = 2e6 / (low + high);
  const on = sumUp(kelvin);
  return { kelvin, duv: Math.sign(point.v - on.v) * distance(point, on) };
}

/** A chromaticity from 1500 to 20 000 K and up to 0.03 off the locus, where the accuracy is promised. */
function sampleNear(chance: Chance, hottest: number): [number, number] {
  const kelvin = 1500 * (hottest / 1500) ** chance();
  const { u, v } = across(kelvin, 0.06 * (chance() - 0.5));
  const sum = 2 * u - 8 * v + 4;
  return [(3 * u) / sum, (2 * v) / sum];
}

function uv([x = NaN, y = NaN]: readonly number[]): Point {
  return { u: (4 * x) / (-2 * x + 12 * y + 3), v: (6 * y) / (-2 * x + 12 * y + 3) };
}

const searched = { against: 'a search on the summed locus', oneIn: 10 };

interface ExactPoint {
  readonly u: Digits;
  readonly v: Digits;
}

function sumExactly(kelvin: Digits): ExactPoint {
  let [X, Y, Z] = [new Exact(0), new Exact(0), new Exact(0)];
  for (const { nanometres, x, y, z } of rows) {
    const length = new Exact(nanometres).times('1e-9');
    const exponent = new Exact(c2).div(length.times(kelvin));
    const power = new Exact(1).div(length.pow(5).times(exponent.exp().minus(1)));
    X = X.plus(power.times(x));
    Y = Y.plus(power.times(y));
    Z = Z.plus(power.times(z));
  }
  const sum = X.plus(Y.times(15)).plus(Z.times(3));
  return { u: X.times(4).div(sum), v: Y.times(6).div(sum) };
}

/** x, y at a distance across the locus, whose direction comes from two sums close together. */
function planck([kelvin = NaN, duv = 0]: readonly number[]): { x: Digits; y: Digits } {
  const here = new Exact(kelvin);
  const [on, warm, cool] = [here, here.times('0.999999999999'), here.times('1.000000000001')].map(
    sumExactly,
  );
  if (!on || !warm || !cool) throw new Error('Three points were asked for.');
  const [du, dv] = [warm.u.minus(cool.u), warm.v.minus(cool.v)];
  const length = du.pow(2).plus(dv.pow(2)).sqrt();
  const u = on.u.minus(dv.times(duv).div(length));
  const v = on.v.plus(du.times(duv).div(length));
  const sum = u.times(2).minus(v.times(8)).plus(4);
  return { x: u.times(3).div(sum), y: v.times(2).div(sum) };
}

const summed = { against: 'Planck’s law summed with fifty digits', limit: 1e-12, oneIn: 100 };

const cctUpTo = (hottest: number) => ({
  against: `a search on the summed locus, to ${String(hottest)} K`,
  sample: (chance: Chance) => sampleNear(chance, hottest),
  work: (xy: readonly number[]) => nearest(uv(xy)).kelvin,
});

export const colour: References = {
  CCT: [
    { ...searched, unit: 'K', limit: 0.5, ...cctUpTo(10_000) },
    { ...searched, unit: 'K', limit: 5, ...cctUpTo(20_000) },
  ],
  DUV: {
    ...searched,
    unit: '',
    limit: 1e-5,
    sample: (chance) => sampleNear(chance, 20_000),
    work: (xy: readonly number[]) => nearest(uv(xy)).duv,
  },
  PLANCKX: { ...summed, work: (args: readonly number[]) => planck(args).x },
  PLANCKY: { ...summed, work: (args: readonly number[]) => planck(args).y },
  GREENCC: {
    against: 'halving on the model: the green third times g',
    unit: 'CC',
    limit: 1e-3,
    oneIn: 10,
    work: ([kelvin = NaN, duv = NaN]: readonly number[]) => {
      const on = sumUp(kelvin);
      const off = across(kelvin, 1);
      const weigh = (g: number) => (nanometres: number) => {
        if (nanometres === 500 || nanometres === 600) return (1 + g) / 2;
        return nanometres > 500 && nanometres < 600 ? g : 1;
      };
      const lies = (g: number) => {
        const { u, v } = sumUp(kelvin, weigh(g));
        return (u - on.u) * (off.u - on.u) + (v - on.v) * (off.v - on.v);
      };
      let [less, more] = [0, 64];
      if (lies(less) > duv || lies(more) < duv) return undefined;
      for (let turn = 0; turn < 60; turn += 1) {
        const g = (less + more) / 2;
        if (lies(g) < duv) less = g;
        else more = g;
      }
      return -100 * Math.log10(less);
    },
  },
};
