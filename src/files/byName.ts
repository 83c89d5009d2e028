import { keyOf } from '../book/fixtures.ts';
import type { ShelfItem } from '../book/types.ts';

/** What stands on a shelf, looked up by name without regard to case; the first of a name counts. */
export interface ByName<Thing> {
  /** In order. */
  readonly names: readonly string[];
  named(name: string): Thing | string | undefined;
}

/** `unknown` is the sentence for an item that this version cannot read. */
export function byName<Thing>(
  shelf: readonly ShelfItem[],
  read: (item: ShelfItem) => Thing | string | undefined,
  unknown: string,
): ByName<Thing> {
  const items = new Map<string, ShelfItem>();
  const names: string[] = [];
  for (const item of shelf) {
    const { name } = item;
    if (typeof name !== 'string' || items.has(keyOf(name))) continue;
    items.set(keyOf(name), item);
    names.push(name);
  }
  return {
    names: names.toSorted((one, other) => (keyOf(one) < keyOf(other) ? -1 : 1)),
    named(name) {
      const item = items.get(keyOf(name));
      return item && (read(item) ?? unknown);
    },
  };
}
