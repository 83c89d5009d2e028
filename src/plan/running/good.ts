import { costOf, type Turns } from './turns.ts';

/** Less than this is no gain: sums of hours end in rounding. */
const gain = 1e-9;

/**
 * A good order where there are too many for the best: from the one given and from one that always goes
 * to what costs least next, things change places or go elsewhere as long as that helps.
 */
export function goodOrder(turns: Turns, given: readonly number[]): readonly number[] {
  const [one, other] = [improved(turns, given), improved(turns, nearest(turns))];
  return costOf(turns, other) < costOf(turns, one) - gain ? other : one;
}

function improved(turns: Turns, given: readonly number[]): readonly number[] {
  const free = given.flatMap((one, place) => (turns.stays.has(one) ? [] : [place]));
  let order = given;
  let cost = costOf(turns, order);
  for (let better = true; better;) {
    better = false;
    for (const tried of neighbours(order, free)) {
      const now = costOf(turns, tried);
      if (now >= cost - gain) continue;
      [order, cost, better] = [tried, now, true];
      break;
    }
  }
  return order;
}

/** As many go elsewhere together at most. */
const longest = 8;

/** Every pair that may has changed places, and every few in a row stand at every other place. */
function* neighbours(order: readonly number[], free: readonly number[]) {
  const loose = free.map((place) => order[place] ?? 0);
  const laid = (list: readonly number[]) => {
    const next = [...order];
    for (const [index, place] of free.entries()) next[place] = list[index] ?? 0;
    return next;
  };
  for (let from = 0; from < loose.length; from += 1)
    for (let to = from + 1; to < loose.length; to += 1)
      yield laid(loose.with(from, loose[to] ?? 0).with(to, loose[from] ?? 0));
  for (let few = 1; few <= Math.min(longest, loose.length - 1); few += 1)
    for (let from = 0; from + few <= loose.length; from += 1) {
      const rest = loose.toSpliced(from, few);
      for (let to = 0; to <= rest.length; to += 1)
        if (to !== from) yield laid(rest.toSpliced(to, 0, ...loose.slice(from, from + few)));
    }
}

/** Always to what costs least next, begun with each that may be the first; the cheapest of these. */
function nearest(turns: Turns): readonly number[] {
  const all = Array.from({ length: turns.count }, (_, one) => one);
  return all
    .map((one) => nearestFrom(turns, one))
    .reduce((best, one) => (costOf(turns, one) < costOf(turns, best) ? one : best));
}

function nearestFrom({ count, change, stays }: Turns, begun: number): readonly number[] {
  const heldAt = new Map([...stays].map(([one, place]) => [place, one]));
  const loose = new Set(
    Array.from({ length: count }, (_, one) => one).filter((one) => !stays.has(one)),
  );
  const order: number[] = [];
  while (order.length < count) {
    const last = order.at(-1) ?? begun;
    const cheapest = [...loose].reduce(
      (best, one) => (best === undefined || change(last, one) < change(last, best) ? one : best),
      order.length === 0 && loose.has(begun) ? begun : undefined,
    );
    const next = heldAt.get(order.length) ?? cheapest ?? 0;
    loose.delete(next);
    order.push(next);
  }
  return order;
}
