import { everyNanometre } from '../colour/everyNanometre.ts';
import type { Tristimulus } from '../colour/observer.ts';
import { observer1931 } from '../data/observer1931.ts';
import { testColours } from '../data/testColours.ts';
import { curveOf, longest, shortest, stepOf, type Spectrum } from './spectrum.ts';

/** Wavelengths from 380 to 780 nm with what the CIE tables say at each. */
export interface Grid {
  readonly step: 1 | 5;
  readonly nanometres: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
  readonly z: Float64Array;
  /** Test colours 1 to 14. */
  readonly colours: readonly Float64Array[];
}

/** A spectrum on a grid. */
export interface Sampled {
  readonly grid: Grid;
  readonly values: Float64Array;
}

/** The CIE tables begin here, every 5 nm. */
const begin = 360;

function gridOf(step: 1 | 5): Grid {
  const count = (longest - shortest) / step + 1;
  const column = (rows: readonly (readonly number[])[], index: number) => {
    const table = rows.map((row) => row[index] ?? 0);
    const fine = step === 1 ? everyNanometre(table) : table;
    const from = (shortest - begin) / step;
    return Float64Array.from(fine.slice(from, from + count));
  };
  return {
    step,
    nanometres: Float64Array.from({ length: count }, (_, index) => shortest + step * index),
    x: column(observer1931, 1),
    y: column(observer1931, 2),
    z: column(observer1931, 3),
    colours: Array.from({ length: 14 }, (_, index) => column(testColours, index + 1)),
  };
}

const made = new Map<1 | 5, Grid>();

/**
 * The grid with a step of 5 nm, on which CIE 13.3 and the printed tables are computed, or of 1 nm for
 * spectra that are read more closely than that.
 */
export function grid(step: 1 | 5): Grid {
  const known = made.get(step);
  if (known) return known;
  const one = gridOf(step);
  made.set(step, one);
  return one;
}

export function sampled(spectrum: Spectrum): Sampled {
  const on = grid(stepOf(spectrum) < 5 - 1e-6 ? 1 : 5);
  return { grid: on, values: on.nanometres.map(curveOf(spectrum)) };
}

/** Sums over the CIE 1931 observer, times the step in nanometres. */
export function tristimulusOf({ grid: on, values }: Sampled): Tristimulus {
  const { x, y, z, step } = on;
  let [X, Y, Z] = [0, 0, 0];
  for (let index = 0; index < values.length; index += 1) {
    const value = values[index]! * step;
    X += value * x[index]!;
    Y += value * y[index]!;
    Z += value * z[index]!;
  }
  return { X, Y, Z };
}
