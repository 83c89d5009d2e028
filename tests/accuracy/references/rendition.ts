import { daylightComponents } from '../../../functions/data/daylightComponents.ts';
import { observer1931 } from '../../../functions/data/observer1931.ts';
import { televisionCamera } from '../../../functions/data/televisionCamera.ts';
import { televisionPatches } from '../../../functions/data/televisionPatches.ts';
import { testColours } from '../../../functions/data/testColours.ts';
import { colourDifference } from './difference.ts';

/** Tables every 5 nm from 380 nm on; their data is shared with the functions, nothing else. */
const from380 = (table: readonly (readonly number[])[]) =>
  table.filter(([nm = 0]) => nm >= 380 && nm <= 780);
const observer = from380(observer1931);
const colours = from380(testColours);
const lengths = observer.map(([nm = 0]) => nm);

const dot = (one: readonly number[], other: readonly number[]) =>
  one.reduce((sum, value, index) => sum + value * (other[index] ?? 0), 0);
const col = (table: readonly (readonly number[])[], index: number) =>
  table.map((row) => row[index] ?? 0);
const product = (one: readonly number[], other: readonly number[]) =>
  one.map((value, index) => value * (other[index] ?? 0));
const XYZ = (power: readonly number[]) =>
  [1, 2, 3].map((which) => dot(power, col(observer, which)));

const planck = (nm: number, kelvin: number, c2 = 1.4388e7) =>
  (560 / nm) ** 5 / (Math.exp(c2 / (nm * kelvin)) - 1);

type Weights = readonly [
  first: readonly number[],
  second: readonly number[],
  whole: readonly number[],
];
const ofCie: Weights = [
  [-1.3515, -1.7703, 5.9114],
  [0.03, -31.4424, 30.0717],
  [0.0241, 0.2562, -0.7341],
];
const ofEbu: Weights = [
  [-1.34674, -1.77861, 5.90757],
  [0.03638, -31.44464, 30.064],
  [0.02387, 0.25539, -0.73217],
];

/** A phase of daylight by wavelength from 300 nm on, every 5 nm. */
function daylight(kelvin: number, [first, second, whole]: Weights, digits?: number) {
  const t = 1000 / kelvin;
  const x =
    kelvin <= 7000
      ? -4.607 * t ** 3 + 2.9678 * t ** 2 + 0.09911 * t + 0.244063
      : -2.0064 * t ** 3 + 1.9018 * t ** 2 + 0.24748 * t + 0.23704;
  const at = [1, x, -3 * x * x + 2.87 * x - 0.275];
  const [m1 = 0, m2 = 0] = [first, second].map((weights) => {
    const m = dot(weights, at) / dot(whole, at);
    return digits === undefined ? m : Number(m.toFixed(digits));
  });
  return daylightComponents.map(([, s0, s1, s2]) => s0 + m1 * s1 + m2 * s2);
}

const seen = (spectrum: readonly number[]) => spectrum.slice((380 - 300) / 5, (780 - 300) / 5 + 1);

/** Ra and R1 to R14. */
export function colourRendering(power: readonly number[], kelvin: number): readonly number[] {
  const reference =
    kelvin < 5000 ? lengths.map((nm) => planck(nm, kelvin)) : seen(daylight(kelvin, ofCie, 3));
  const uv = ([X = 0, Y = 0, Z = 0]: readonly number[]) => {
    const sum = X + 15 * Y + 3 * Z;
    return [(4 * X) / sum, (6 * Y) / sum] as const;
  };
  const [test, wanted] = [uv(XYZ(power)), uv(XYZ(reference))];
  const c = ([u, v]: readonly [number, number]) => (4 - u - 10 * v) / v;
  const d = ([u, v]: readonly [number, number]) => (1.708 * v + 0.404 - 1.481 * u) / v;
  const special = Array.from({ length: 14 }, (_, index) => {
    const colour = col(colours, index + 1);
    const [under, shown] = [power, reference].map((light) => {
      const sent = XYZ(product(light, colour));
      return { at: uv(sent), Y: (100 * (sent[1] ?? 0)) / (XYZ(light)[1] ?? 1) };
    });
    const ck = (c(wanted) / c(test)) * c(under!.at);
    const dk = (d(wanted) / d(test)) * d(under!.at);
    const below = 16.518 + 1.481 * ck - dk;
    const adapted = [(10.872 + 0.404 * ck - 4 * dk) / below, 5.52 / below] as const;
    const uvw = (Y: number, [u, v]: readonly [number, number]) => {
      const W = 25 * Y ** (1 / 3) - 17;
      return [W, 13 * W * (u - wanted[0]), 13 * W * (v - wanted[1])];
    };
    const apart = product(
      [1, 1, 1],
      uvw(under!.Y, adapted).map((one, axis) => one - (uvw(shown!.Y, shown!.at)[axis] ?? 0)),
    );
    return 100 - 4.6 * Math.sqrt(dot(apart, apart));
  });
  return [
    dot(
      special.slice(0, 8),
      Array.from({ length: 8 }, () => 1 / 8),
    ),
    ...special,
  ];
}

/** By a matrix of thirty rows over every nanometre. */
export function similarityOf(power: readonly number[], kelvin: number, named: boolean): number {
  const line = (table: readonly number[], begin: number) => (nm: number) => {
    const place = (nm - begin) / 5;
    const at = Math.floor(place);
    if (place < 0 || place > table.length - 1) return 0;
    return (table[at] ?? 0) * (1 - place + at) + (table[at + 1] ?? 0) * (place - at);
  };
  const factor = named ? 1.4388 / 1.438 : 1;
  const reference =
    kelvin < 4000
      ? (nm: number) => planck(nm, kelvin)
      : line(daylight(kelvin * factor, ofCie, 3), 300);
  const share = (curve: (nm: number) => number) => {
    const every = Array.from({ length: 301 }, (_, index) => curve(375 + index));
    const bands = Array.from({ length: 30 }, (_, band) => {
      const ones = every.map((_value, index) => {
        const off = index - 10 * band;
        return off < 0 || off > 10 ? 0 : off === 0 || off === 10 ? 0.5 : 1;
      });
      return dot(ones, every);
    });
    const whole = dot(
      bands,
      Array.from({ length: 30 }, () => 1),
    );
    return bands.map((band) => band / whole);
  };
  const [test, wanted] = [share(line(power, 380)), share(reference)];
  const weights = [12, 22, 32, 40, 44, ...Array.from({ length: 23 }, () => 45), 33, 9].map(
    (one) => one / 45,
  );
  const padded = [
    ...[0, 0],
    ...test.map((one, band) => ((one - wanted[band]!) / (wanted[band]! + 1 / 30)) * weights[band]!),
    ...[0, 0],
  ];
  const smooth = padded
    .slice(1, -1)
    .map((one, at) => 0.22 * padded[at]! + 0.56 * one + 0.22 * padded[at + 2]!);
  return 100 - 32 * Math.sqrt(dot(smooth, smooth));
}

/** With each step of the standard as one product of matrices. */
export function televisionOf(power: readonly number[], kelvin: number): number | undefined {
  const old = kelvin * (1.435 / 1.4388);
  const warm = (t: number) => lengths.map((nm) => planck(nm, t, 1.435e7) / planck(560, t, 1.435e7));
  const share = (old - 3400) / 1600;
  const mix = () => {
    const cool = seen(daylight(5000, ofEbu));
    return warm(3400).map(
      (one, index) => (1 - share) * one + (share * cool[index]!) / cool[(560 - 380) / 5]!,
    );
  };
  const reference = old < 3400 ? warm(old) : kelvin >= 5000 ? seen(daylight(kelvin, ofEbu)) : mix();
  const whole = [
    [1.182, -0.209, 0.027],
    [0.107, 0.89, 0.003],
    [0.04, -0.134, 1.094],
  ];
  const onScreen = (light: readonly number[], patch: number) => {
    const balanced = [1, 2, 3].map((channel) => {
      const response = col(televisionCamera, channel);
      const sent = product(light.slice(0, response.length), col(televisionPatches, patch));
      return dot(response, sent) / (0.9 * dot(response, light));
    });
    const matrixed = whole.map((row) => dot(row, balanced));
    const mean = dot(matrixed, [1, 1, 1]) / 30;
    const linear = matrixed.map((one) => 0.9 * one + mean);
    if (Math.min(...matrixed, ...linear) < 0) return undefined;
    const lit = linear.map(
      (one) => Math.min(239 / 219, one < 0.018 ? 4.5 * one : 1.099 * one ** 0.45 - 0.099) ** 2.4,
    );
    const X = dot([0.412391, 0.357584, 0.180481], lit) / (0.3127 / 0.329);
    const Y = dot([0.212639, 0.715169, 0.072192], lit);
    const Z = dot([0.019331, 0.119195, 0.950532], lit) / (0.3583 / 0.329);
    return [X, Y, Z];
  };
  const fourths = Array.from({ length: 18 }, (_, index) => {
    const [one, other] = [onScreen(power, index + 1), onScreen(reference, index + 1)];
    return one && other ? [colourDifference(one, other) ** 4] : [];
  }).flat();
  if (fourths.length === 0) return undefined;
  const mean =
    dot(
      fourths,
      fourths.map(() => 1 / fourths.length),
    ) **
    (1 / 4);
  return 100 / (1 + (mean / 3.16) ** 2.4);
}
