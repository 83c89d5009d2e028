import { keyOf } from '../fixtures.ts';

/** Characters that the name of something on a shelf may have. */
export const longestName = 60;

/** A name that is taken gets a number behind it; one that is empty becomes `otherwise`. */
export function freeName(wanted: string, taken: ReadonlySet<string>, otherwise: string): string {
  const name = wanted.trim().slice(0, longestName) || otherwise;
  if (!taken.has(keyOf(name))) return name;
  for (let number = 2; ; number += 1) {
    const other = `${name.slice(0, longestName - 6)} ${String(number)}`;
    if (!taken.has(keyOf(other))) return other;
  }
}
