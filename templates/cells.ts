import type { QuantityName } from '../functions/quantities/names.ts';
import type { PlannedCell } from './plan.ts';

// The kinds of cell that every template is made of.

/** Decided in planning. */
export const choice = (typed: string, quantity: QuantityName): PlannedCell => ({
  typed,
  role: 'choice',
  quantity,
});

/** Stands as it is unless the user knows better. */
export const given = (typed: string, quantity: QuantityName): PlannedCell => ({
  typed,
  role: 'given',
  quantity,
});

export const words = (text: string): PlannedCell => ({ typed: text });

export const heading = (text: string): PlannedCell => ({ ...words(text), bold: true });

/** Captions of numbers stand over the numbers. */
export const numberHeading = (text: string): PlannedCell => ({ ...heading(text), align: 'right' });

/** Lines of text below one another in the first column, under a heading of their own. */
export const remarks = (
  title: string,
  head: number,
  lines: readonly string[],
): Record<string, PlannedCell> => ({
  [`A${head}`]: heading(title),
  ...Object.fromEntries(lines.map((line, index) => [`A${head + 1 + index}`, words(line)])),
});
