import { nominalMark } from './nominalMark.ts';
import { exactAt } from './series.ts';

export interface WholeAndTenths {
  /** Engraved name of the whole stop at or below. */
  readonly whole: number;
  /** 0 to 9. */
  readonly tenths: number;
}

/** Splits an exact f-number as meters read it out: whole-stop mark at or below, tenths above it. */
export function wholeAndTenths(exact: number): WholeAndTenths {
  const tenthsFromOne = Math.round(20 * Math.log2(exact));
  const stops = Math.floor(tenthsFromOne / 10);
  return { whole: nominalMark(exactAt(stops), 1), tenths: tenthsFromOne - 10 * stops };
}

/** "f/2.8 + 0.3", or "f/2.8" when no tenth is left. */
export function inTenths(exact: number): string {
  const { whole, tenths } = wholeAndTenths(exact);
  return tenths === 0 ? `f/${whole}` : `f/${whole} + 0.${tenths}`;
}
