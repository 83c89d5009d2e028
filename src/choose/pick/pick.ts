import { programme, type Kept, type Loosened } from './programme.ts';
import type { Obstacle, Pick, Problem } from './problem.ts';
import { tuned } from './tuned.ts';

export type Picked =
  | { readonly kind: 'found'; readonly best: Pick; readonly second?: Pick }
  | { readonly kind: 'none'; readonly obstacle: Obstacle }
  /** Neither a set nor the proof that there is none, in the time. */
  | { readonly kind: 'undecided' };

/** How long one programme may take, and all of those for the second best together. */
export interface Patience {
  readonly each: number;
  readonly second: number;
  /** Milliseconds of some clock. */
  now(): number;
}

/**
 * The cheapest set that reaches every wanted level within tolerance and stays within the circuits,
 * the next one for comparison, or what stands in the way. Yields the share that is done.
 */
export function* pick(problem: Problem, patience: Patience): Generator<number, Picked> {
  yield 0;
  const best = programme(problem, patience.each);
  if (!best) {
    const obstacle = obstacleIn(problem, patience);
    return obstacle ? { kind: 'none', obstacle } : { kind: 'undecided' };
  }
  yield 0.3;
  const second = yield* nextBest(problem, best, patience);
  return {
    kind: 'found',
    best: tuned(problem, best),
    ...(second && { second: tuned(problem, second) }),
  };
}

/** Any other set has one more of something or one less of something: the cheapest of all those. */
function* nextBest(
  problem: Problem,
  best: Pick,
  { each, second, now }: Patience,
): Generator<number, Pick | undefined> {
  const branches = best.counts.flatMap((count, option): Kept[] => [
    ...(count > 0 ? [{ option, atMost: count - 1 }] : []),
    { option, atLeast: count + 1 },
  ]);
  const until = now() + second;
  let found: Pick | undefined;
  for (const [index, kept] of branches.entries()) {
    const left = until - now();
    if (left <= 0) return found && { ...found, proven: false };
    const other = programme(problem, Math.min(each, left), {}, kept);
    if (other && (!found || other.cost < found.cost)) found = other;
    yield 0.3 + (0.7 * (index + 1)) / branches.length;
  }
  return found;
}

function obstacleIn(problem: Problem, { each }: Patience): Obstacle | undefined {
  const loose = (loosened: Loosened) => programme(problem, each, loosened);
  const anyNumber = loose({ items: true });
  if (anyNumber) {
    const lacking = [...anyNumber.more].filter(([, more]) => more > 0);
    if (lacking.length > 0) return { kind: 'items', lacking };
  }
  if (problem.circuits.length > 0 && loose({ circuits: true })) return { kind: 'circuits' };
  const nearest = loose({ levels: true });
  if (!nearest) return undefined;
  const off = problem.points.flatMap(({ name }, index) => {
    const share = nearest.off[index] ?? 0;
    if (Math.abs(share) < 1e-6) return [];
    const edge = 2 ** (Math.sign(share) * problem.tolerance);
    return [[name, Math.log2(Math.max(edge + share, 2 ** -20))] as const];
  });
  return off.length > 0 ? { kind: 'levels', off } : undefined;
}
