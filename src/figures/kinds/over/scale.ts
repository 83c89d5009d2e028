import { ticks } from 'd3-array';
import { scaleLinear, scaleLog } from 'd3-scale';
import type { QuantityName } from '../../../../functions/quantities/names.ts';

/** Numbers onto pixels, and the numbers that are written beside them. */
export interface Axis {
  readonly ticks: readonly number[];
  place(value: number): number;
}

/** Levels further apart than this are read in steps of as many times, as the eye does. */
const wide = 20;

/** Even steps; f-numbers in stops, and levels far apart in tens. */
export function axisOf(
  values: readonly number[],
  quantity: QuantityName | undefined,
  [from, to]: readonly [number, number],
  count: number,
): Axis {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  if (low > 0 && high > low && (quantity === 'fNumber' || high / low > wide)) {
    const scale = scaleLog([low, high], [from, to]);
    const all = quantity === 'fNumber' ? wholeStops(low, high) : tens(low, high);
    const every = Math.max(1, Math.ceil(all.length / count));
    return { ticks: all.filter((_, index) => index % every === 0), place: (value) => scale(value) };
  }
  const pad = high > low ? 0 : Math.max(1e-6, Math.abs(low) * 0.1);
  const scale = scaleLinear([low - pad, high + pad], [from, to]);
  return { ticks: ticks(low - pad, high + pad, count), place: (value) => scale(value) };
}

function wholeStops(low: number, high: number): readonly number[] {
  const first = Math.ceil(Math.log2(low) * 2 - 1e-9);
  const last = Math.floor(Math.log2(high) * 2 + 1e-9);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, index) => 2 ** ((first + index) / 2),
  );
}

function tens(low: number, high: number): readonly number[] {
  const found: number[] = [];
  for (let power = Math.floor(Math.log10(low)); power <= Math.ceil(Math.log10(high)); power += 1)
    for (const mark of [1, 2, 5]) {
      const value = Number((mark * 10 ** power).toPrecision(3));
      if (value >= low && value <= high) found.push(value);
    }
  return found;
}
