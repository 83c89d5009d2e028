import { marks } from './series.ts';
import type { Parts } from './series.ts';

function byName(parts: Parts): ReadonlyMap<number, number> {
  return new Map(marks[parts].map(({ nominal, exact }) => [nominal, exact]));
}

const ofSeries: Readonly<Record<Parts, ReadonlyMap<number, number>>> = {
  1: byName(1),
  2: byName(2),
  3: byName(3),
};

// Thirds first, so that they win a tie; then a nearer mark of another series takes the name.
const ofAny = new Map(ofSeries[3]);
for (const { nominal, exact } of [...marks[1], ...marks[2]]) {
  const known = ofAny.get(nominal);
  if (known === undefined || Math.abs(exact - nominal) < Math.abs(known - nominal)) {
    ofAny.set(nominal, exact);
  }
}

/**
 * What an engraved f-number stands for: 5.6 is 2^(5/2). Where a rounded name fits two marks the
 * nearer one is meant (1.2 is the half stop, 13 the third); `parts` names the scale instead.
 * Any other number is taken as it stands.
 */
export function exactMark(fNumber: number, parts?: Parts): number {
  return (parts === undefined ? ofAny : ofSeries[parts]).get(fNumber) ?? fNumber;
}

/** Whether a number is engraved on any of the scales. */
export function isMark(fNumber: number): boolean {
  return ofAny.has(fNumber);
}
