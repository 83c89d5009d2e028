/** What an order of things costs: to begin with one, to go from one to another, to end with one. */
export interface Turns {
  readonly count: number;
  first(one: number): number;
  change(from: number, to: number): number;
  last(one: number): number;
  /** Things that stay at a place of the order, both counted from 0. */
  readonly stays: ReadonlyMap<number, number>;
}

export function costOf({ first, change, last }: Turns, order: readonly number[]): number {
  const end = order.at(-1);
  return order.reduce(
    (sum, one, index) => {
      const before = order[index - 1];
      return sum + (before === undefined ? first(one) : change(before, one));
    },
    end === undefined ? 0 : last(end),
  );
}
