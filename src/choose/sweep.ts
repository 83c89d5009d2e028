import type { Spot } from '../book/look.ts';
import type { Content } from '../book/types.ts';
import type { CellValue } from '../engine/types.ts';
import type { Trial } from './trial.ts';

export interface Axis {
  readonly spot: Spot;
  readonly values: readonly Content[];
}

/** One or two cells to be varied, and the cells to be read each time. */
export interface Sweep {
  readonly down: Axis;
  readonly across?: Axis;
  readonly read: readonly Spot[];
}

/** `results[down][across][read]`; with one axis there is one place across. */
export type Swept = readonly (readonly (readonly CellValue[])[])[];

export const casesOf = ({ down, across }: Sweep): number =>
  down.values.length * (across?.values.length ?? 1);

/** Tries every case and leaves the trial as it was. Yields the share that is done. */
export function* sweep(trial: Trial, plan: Sweep): Generator<number, Swept | string> {
  const { down, across, read } = plan;
  const cases = casesOf(plan);
  const results: CellValue[][][] = [];
  let done = 0;
  for (const value of down.values) {
    const refused = trial.put(down.spot, value);
    if (refused !== undefined) return refused;
    const line: CellValue[][] = [];
    for (const second of across?.values ?? [undefined]) {
      const no = across && second && trial.put(across.spot, second);
      if (no !== undefined) return no;
      line.push(read.map((spot) => trial.valueOf(spot)));
      done += 1;
      if (done % 50 === 0) yield done / cases;
    }
    results.push(line);
  }
  return results;
}
