import { pack } from './pack.ts';
import { branched } from './branched.ts';
import { modelOf, placesOf, type Kept, type Loosened } from './model.ts';
import type { Pick, Problem } from './problem.ts';

export type { Kept, Loosened };

export interface Programmed extends Pick {
  /** Pieces more than there are, by item; only where items are let go. */
  readonly more: ReadonlyMap<string, number>;
  /** Share of what is wanted by which a point is under (negative) or over. */
  readonly off: readonly number[];
}

/**
 * The cheapest set: whole fixtures on circuits, and a share of light for what can be dimmed.
 * `undefined` where there is none, or none was found in the time. Circuits that are alike make a
 * programme long, so all of them are taken as one first: the cheapest set of that is the cheapest of
 * all if it can be hung on them, and none there is none at all.
 */
export function programme(
  problem: Problem,
  milliseconds: number,
  loosened: Loosened = {},
  kept?: Kept,
): Programmed | undefined {
  const { circuits } = problem;
  if (loosened.circuits || circuits.length < 2)
    return solved(problem, milliseconds, loosened, kept);
  const most = Math.max(...circuits.map(({ amps }) => amps));
  const amps = circuits.reduce((sum, one) => sum + one.amps, 0);
  const together = { ...problem, circuits: [{ name: '', amps }] };
  const found = solved(together, milliseconds, loosened, kept, most);
  if (!found) return undefined;
  const onCircuits = pack(problem, found.counts);
  return onCircuits ? { ...found, onCircuits } : solved(problem, milliseconds, loosened, kept);
}

/** As a mixed-integer programme; no fixture that draws more than `mostAmps` is taken. */
function solved(
  problem: Problem,
  milliseconds: number,
  loosened: Loosened,
  kept?: Kept,
  mostAmps = Infinity,
): Programmed | undefined {
  const places = placesOf(problem, loosened);
  const model = modelOf(problem, loosened, kept, mostAmps);
  const priced = !loosened.items && !loosened.levels;
  const found = branched(model, milliseconds, priced ? leastStep(problem) : 1e-6);
  if (!found) return undefined;
  const { options, points } = problem;
  const of = (name: string) => found.values.get(name) ?? 0;
  const onCircuits = options.map((_, index) =>
    [...places.keys()].map((place) => Math.round(of(`count ${index} ${place}`))),
  );
  const counts = onCircuits.map((line) => line.reduce((sum, count) => sum + count, 0));
  return {
    counts,
    outputs: counts.map((count, index) =>
      count === 0 ? 0 : Math.min(1, of(`light ${index}`) / count),
    ),
    onCircuits,
    cost: counts.reduce((sum, count, index) => sum + count * (options[index]?.cost ?? 0), 0),
    proven: found.proven,
    more: new Map(
      [...problem.available.keys()].map((item) => [item, Math.round(of(`more ${item}`))]),
    ),
    off: points.map((_, index) => of(`over ${index}`) - of(`under ${index}`)),
  };
}

/** By how much the costs of two sets differ at least, if they do: the largest coin that all prices are made of. */
function leastStep({ options }: Problem): number {
  const cents = options.map(({ cost }) => Math.round(cost * 100));
  const exact = options.every(
    ({ cost }, index) => Math.abs(cost * 100 - (cents[index] ?? 0)) < 1e-6,
  );
  const common = exact ? cents.reduce(commonDivisor, 0) / 100 : 0;
  return Math.max(common, 1e-6);
}

const commonDivisor = (a: number, b: number): number => (b === 0 ? a : commonDivisor(b, a % b));
