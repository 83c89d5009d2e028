import type { Turns } from './turns.ts';

/** Up to here every set of things is looked at: half a million states, well under a second. */
export const mostForBest = 15;

/**
 * The order that costs least, over all orders: for each set of things and each that may be its last,
 * the least that it costs to have done them (Held and Karp, 1962). At most `mostForBest` things.
 */
export function bestOrder({ count, first, change, last: end, stays }: Turns): readonly number[] {
  const sets = 1 << count;
  const least = new Float64Array(sets * count).fill(Infinity);
  const before = new Int8Array(sets * count).fill(-1);
  const heldAt = new Map([...stays].map(([one, place]) => [place, one]));
  const mayStand = (one: number, place: number): boolean => {
    const holds = heldAt.get(place);
    return holds === undefined ? !stays.has(one) : holds === one;
  };
  for (let one = 0; one < count; one += 1)
    if (mayStand(one, 0)) least[(1 << one) * count + one] = first(one);
  for (let set = 1; set < sets; set += 1) {
    const place = bitsIn(set);
    for (let last = 0; last < count; last += 1) {
      const here = least[set * count + last] ?? Infinity;
      if (here === Infinity) continue;
      for (let next = 0; next < count; next += 1) {
        if (set & (1 << next) || !mayStand(next, place)) continue;
        const at = (set | (1 << next)) * count + next;
        const cost = here + change(last, next);
        if (cost >= (least[at] ?? Infinity)) continue;
        least[at] = cost;
        before[at] = last;
      }
    }
  }
  for (let last = 0; last < count; last += 1) {
    const at = (sets - 1) * count + last;
    least[at] = (least[at] ?? Infinity) + end(last);
  }
  return walkedBack(least, before, count);
}

function walkedBack(least: Float64Array, before: Int8Array, count: number): readonly number[] {
  let set = (1 << count) - 1;
  let last = 0;
  for (let one = 1; one < count; one += 1)
    if ((least[set * count + one] ?? 0) < (least[set * count + last] ?? 0)) last = one;
  const order: number[] = [];
  while (set > 0) {
    order.unshift(last);
    const previous = before[set * count + last] ?? -1;
    set &= ~(1 << last);
    last = previous;
  }
  return order;
}

function bitsIn(set: number): number {
  let count = 0;
  for (let rest = set; rest > 0; rest &= rest - 1) count += 1;
  return count;
}
