import { programme, type Kept, type Loosened, type Programmed } from './programme.ts';
import type { Obstacle, Pick, Problem } from './problem.ts';
import { inOneGo, part } from './share.ts';
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
  const { each, now } = patience;
  const best = yield* part(programme(problem, { milliseconds: each, now }), 0, firstShare);
  if (best === 'undecided') return { kind: 'undecided' };
  if (best === 'none') {
    const obstacle = obstacleIn(problem, patience);
    return obstacle ? { kind: 'none', obstacle } : { kind: 'undecided' };
  }
  const second = yield* nextBest(problem, best, patience);
  // Where there was no proof, the next may be the better one.
  const [first, next] = second && second.cost < best.cost ? [second, best] : [best, second];
  const least = Math.min(first.cost, best.least);
  return {
    kind: 'found',
    best: tuned(problem, { ...first, least, proven: least >= first.cost }),
    ...(next && { second: tuned(problem, next) }),
  };
}

/** The share of the work up to the best set; the rest goes to the second best. */
const firstShare = 0.3;
const shareOf = (second: number): number => firstShare + (1 - firstShare) * second;

/** Any other set has one more of something or one less of something: the cheapest of all those. */
function* nextBest(
  problem: Problem,
  best: Programmed,
  { each, second, now }: Patience,
): Generator<number, Pick | undefined> {
  const branches = best.counts.flatMap((count, option): Kept[] => [
    ...(count > 0 ? [{ option, atMost: count - 1 }] : []),
    { option, atLeast: count + 1 },
  ]);
  const until = now() + second;
  const [met] = best.others;
  let found: Pick | undefined = met && { ...met, least: best.least, proven: false };
  for (const [index, kept] of branches.entries()) {
    const left = until - now();
    if (left <= 0) break;
    const milliseconds = Math.min(each, left / (branches.length - index));
    const below = found?.cost ?? Infinity;
    const [done, next] = [index, index + 1].map((at) => shareOf(at / branches.length));
    const looked = programme(problem, { milliseconds, kept, below, now });
    const other = yield* part(looked, done ?? 0, next ?? 1);
    if (typeof other !== 'string') found = other;
  }
  return found;
}

function obstacleIn(problem: Problem, { each, now }: Patience): Obstacle | undefined {
  const loose = (loosened: Loosened) => {
    const found = inOneGo(programme(problem, { milliseconds: each, loosened, now }));
    return typeof found === 'string' ? undefined : found;
  };
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
