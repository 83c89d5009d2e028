import { exactAt, firstStop, marks } from './series.ts';
import type { Parts } from './series.ts';

/**
 * The engraved name nearest in stops to an exact f-number, on the scale of whole, half or third
 * stops. Outside the engraved scales the exact mark rounded to two digits.
 */
export function nominalMark(exact: number, parts: Parts = 3): number {
  const step = Math.round(2 * Math.log2(exact) * parts);
  const mark = marks[parts][step - firstStop * parts];
  return mark?.nominal ?? Number(exactAt(step / parts).toPrecision(2));
}
