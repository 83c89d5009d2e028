import {
  longest,
  shortest,
  stepOf,
  type MadeUp,
  type Measures,
  type Spectrum,
} from './spectrum.ts';

/** One row of a spectrum as it was read. */
export interface Reading {
  readonly nm: number;
  readonly value: number;
}

/** Why readings make no spectrum; `at` is the index of the reading that it shows in. */
export type Fault =
  | { readonly kind: 'few' }
  | { readonly kind: 'dark' }
  | { readonly kind: 'unit' | 'negative' | 'huge' | 'passing'; readonly at: number }
  | { readonly kind: 'order' | 'gap'; readonly at: number }
  | { readonly kind: 'short'; readonly at: number; readonly end: 'low' | 'high' };

export type Checked =
  | { readonly ok: true; readonly spectrum: Spectrum }
  | { readonly ok: false; readonly fault: Fault };

/** Readings may be so far apart, in nanometres: what lies between is a straight line. */
export const widestGap = 20;
/** From here to there must be read; the faint ends beyond are taken as the last reading. */
export const [mustBegin, mustEnd] = [400, 700];
/** More than any meter gives. */
export const mostReadings = 20_000;
const fewest = 5;
/** No unit makes light of so much, and none of so little. */
const [tooMuch, tooLittle] = [1e100, 1e-100];
/** Less than nothing by so much of the highest reading is a meter’s noise about zero. */
const noise = 0.01;
/** Where wavelengths in nanometres can lie. */
const [lowest, highest] = [100, 10_000];

/** Readings of rising wavelength as a spectrum, or the first thing that is wrong with them. */
export function checkReadings(readings: readonly Reading[], measures: Measures): Checked {
  const fault = faultIn(readings, measures);
  if (fault) return { ok: false, fault };
  const spectrum: Spectrum = {
    nanometres: Float64Array.from(readings, ({ nm }) => nm),
    values: Float64Array.from(readings, ({ value }) => Math.max(0, value)),
    measures,
  };
  return { ok: true, spectrum: { ...spectrum, madeUp: madeUpIn(readings, stepOf(spectrum)) } };
}

function faultIn(readings: readonly Reading[], measures: Measures): Fault | undefined {
  const count = readings.length;
  if (count < fewest || count > mostReadings) return { kind: 'few' };
  const most = readings.reduce((most, { value }) => Math.max(most, value), 0);
  for (const [at, { nm, value }] of readings.entries()) {
    if (!(nm >= lowest && nm <= highest)) return { kind: 'unit', at };
    if (at > 0 && nm <= readings[at - 1]!.nm) return { kind: 'order', at };
    if (!(Math.abs(value) < tooMuch)) return { kind: 'huge', at };
    if (value < -noise * most) return { kind: 'negative', at };
    if (measures === 'transmission' && value > 1) return { kind: 'passing', at };
  }
  if (readings[0]!.nm > mustBegin) return { kind: 'short', at: 0, end: 'low' };
  if (readings.at(-1)!.nm < mustEnd) return { kind: 'short', at: count - 1, end: 'high' };
  const gap = readings.findIndex(
    ({ nm }, at) =>
      at > 0 && inside(readings[at - 1]!.nm, nm) && nm - readings[at - 1]!.nm > widestGap,
  );
  if (gap >= 0) return { kind: 'gap', at: gap };
  // Only what is seen counts: a lamp of infrared is dark.
  const lit = readings.some(
    ({ nm, value }) => nm >= shortest && nm <= longest && value > tooLittle,
  );
  return lit ? undefined : { kind: 'dark' };
}

const inside = (from: number, to: number) => from < longest && to > shortest;

function madeUpIn(readings: readonly Reading[], step: number): readonly MadeUp[] {
  const [first, last] = [readings[0]!.nm, readings.at(-1)!.nm];
  const below = readings.filter(({ value }) => value < 0).map(({ nm }) => nm);
  return [
    ...(first > shortest ? [{ kind: 'below', from: shortest, to: first } as const] : []),
    ...readings.flatMap(({ nm }, at) => {
      const from = readings[at - 1]?.nm ?? nm;
      return inside(from, nm) && nm - from >= 1.5 * step && nm - from > 1
        ? [{ kind: 'gap', from, to: nm } as const]
        : [];
    }),
    ...(last < longest ? [{ kind: 'above', from: last, to: longest } as const] : []),
    ...(below.length > 0 ? [{ kind: 'noise', from: below[0]!, to: below.at(-1)! } as const] : []),
  ];
}
