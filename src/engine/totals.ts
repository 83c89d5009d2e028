import type { Handed, Rule } from './handed.ts';
import { allOf, joined } from './joining.ts';
import type { Kind } from './kinds.ts';
import { sought, soughtInPairs } from './lookups.ts';

/** Sums and means that do not give more of the same: light adds as the square of an f-number. */
const untotalled: Readonly<Record<string, readonly Kind[]>> = {
  SUM: ['fNumber', 'colourTemperature', 'ev'],
  AVERAGE: ['fNumber', 'colourTemperature'],
};

function totalled(handed: Handed, kind: Kind, index: number): Kind {
  const total = handed.call.name.startsWith('SUM') ? 'SUM' : 'AVERAGE';
  if (kind === undefined || untotalled[total]?.includes(kind) !== true) return kind;
  handed.hear({ about: 'totalled', call: handed.call.name, given: handed.part(index, kind) });
  return undefined;
}

/** `SUM(range, …)` and `AVERAGE(range, …)`. */
export const total: Rule = (handed) => totalled(handed, allOf(handed), 0);

/** `SUMIF(range, criterion, sum_range)`: what is added up is the last range. */
export const totalIf: Rule = (handed) => {
  const index = handed.count > 2 ? 2 : 0;
  sought(handed, 1, 0, handed.kinds(0));
  return totalled(handed, joined(handed, [index]), index);
};

/** `SUMIFS(sum_range, range, criterion, …)`. */
export const totalIfs: Rule = (handed) => {
  soughtInPairs(handed, 1);
  return totalled(handed, joined(handed, [0]), 0);
};
