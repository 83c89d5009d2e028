import { branched, rounded } from './branched.ts';
import { modelOf, placesOf, type Kept, type Loosened } from './model.ts';
import { pack } from './pack.ts';
import type { Pick, Problem } from './problem.ts';
import { part } from './share.ts';
import { start, type Started } from './start.ts';
import { isMet, withoutTraces } from './traces.ts';

export type { Kept, Loosened };

export interface Programmed extends Pick {
  /** Pieces more than there are, by item; only where items are let go. */
  readonly more: ReadonlyMap<string, number>;
  /** Share of what is wanted by which a point is under (negative) or over. */
  readonly off: readonly number[];
  /** Other sets that were met, the cheapest first. */
  readonly others: readonly Started[];
}

/** Surely none, or neither one nor the proof that there is none in the time. */
export type None = 'none' | 'undecided';

/** What is looked for, and how long. */
export interface Looked {
  readonly milliseconds: number;
  readonly loosened?: Loosened;
  readonly kept?: Kept;
  /** Only what is cheaper than this is looked for, and not by trial. */
  readonly below?: number;
  /** Milliseconds of some clock. */
  now(): number;
}

/** Trials without a cheaper set after which the proof is begun. */
const turns = 150;

/** The share of the time for trials. */
const trials = 0.2;

const priced = ({ items, levels }: Loosened): boolean => !items && !levels;

/**
 * The cheapest set: whole fixtures on circuits, and a share of light for what can be dimmed. Sets
 * found by trial say what is too dear to be looked at. Circuits that are alike make a programme long,
 * so all of them are taken as one first: the cheapest set of that is the cheapest of all if it can be
 * hung on them, and none there is none at all. Yields the share that is done.
 */
export function* programme(given: Problem, looked: Looked): Generator<number, Programmed | None> {
  const { milliseconds, loosened = {}, kept, now } = looked;
  const until = now() + milliseconds;
  const clean = withoutTraces(given);
  const problem = loosened.circuits ? { ...clean, circuits: [] } : clean;
  const effort = { turns, until: now() + milliseconds * trials, now };
  const byTrial = priced(loosened) && looked.below === undefined;
  const tried = byTrial ? yield* part(start(problem, kept, effort), 0, trials) : [];
  const [first, ...others] = tried;
  const begun = first && { ...first, least: 0, proven: false, more: new Map(), off: [], others };
  const below = looked.below ?? first?.cost ?? Infinity;
  const ask: Ask = { loosened, kept, below, until, begun, now };
  const { circuits } = problem;
  if (circuits.length < 2) return yield* part(solved(problem, ask), trials, 1);
  const most = Math.max(...circuits.map(({ amps }) => amps));
  const amps = circuits.reduce((sum, one) => sum + one.amps, 0);
  const one = { ...problem, circuits: [{ name: '', amps }] };
  const together = yield* part(solved(one, ask, most), trials, 1);
  if (typeof together === 'string') return together;
  if (begun && together.cost >= begun.cost) return together;
  const onCircuits = pack(problem, together.counts);
  if (onCircuits) return { ...together, onCircuits };
  const apart = yield* solved(problem, ask);
  if (typeof apart === 'string') return apart;
  return { ...apart, least: Math.max(apart.least, together.least) };
}

interface Ask {
  readonly loosened: Loosened;
  readonly kept: Kept | undefined;
  readonly below: number;
  readonly until: number;
  /** What there is already, if anything; `below` is what it costs. */
  readonly begun: Programmed | undefined;
  now(): number;
}

/** As a mixed-integer programme; no fixture that draws more than `mostAmps` is taken. */
function* solved(
  problem: Problem,
  { loosened, kept, below, until, begun, now }: Ask,
  mostAmps = Infinity,
): Generator<number, Programmed | None> {
  const places = placesOf(problem, loosened);
  const model = modelOf(problem, loosened, kept, mostAmps);
  const step = priced(loosened) ? leastStep(problem) : 1e-6;
  const near = priced(loosened) ? undefined : rounded(model);
  const limit = (near?.result ?? below) - step / 2;
  const found = yield* branched(model, { below: limit, step, until, now });
  const values = found.values ?? (near && new Map(near.variables));
  const shown = (cost: number) => {
    const least = found.proven ? cost : Math.min(cost, Math.max(0, upTo(found.least, step)));
    return { least, proven: found.proven || least >= cost };
  };
  if (!values && begun) return { ...begun, ...shown(begun.cost) };
  if (!values) return found.proven ? 'none' : 'undecided';
  const { options, points } = problem;
  const of = (name: string) => values.get(name) ?? 0;
  const onCircuits = options.map((_, index) =>
    [...places.keys()].map((place) => Math.round(of(`count ${index} ${place}`))),
  );
  const counts = onCircuits.map((line) => line.reduce((sum, count) => sum + count, 0));
  const cost = counts.reduce((sum, count, index) => sum + count * (options[index]?.cost ?? 0), 0);
  const outputs = counts.map((count, index) =>
    count === 0 ? 0 : Math.min(1, of(`light ${index}`) / count),
  );
  // What rounding spoiled is no set, and no proof of anything.
  if (!loosened.levels && !isMet(problem, counts, outputs)) return begun ?? 'undecided';
  return {
    counts,
    outputs,
    onCircuits,
    cost,
    ...shown(cost),
    more: new Map(
      [...problem.available.keys()].map((item) => [item, Math.round(of(`more ${item}`))]),
    ),
    off: points.map((_, index) => of(`over ${index}`) - of(`under ${index}`)),
    others: begun ? [begun, ...begun.others] : [],
  };
}

/** The least sum of whole coins that is no less, but for what rounding and trifles may add. */
const upTo = (least: number, step: number): number =>
  step > slack ? Math.ceil((least - slack) / step) * step : least - slack;

const slack = 1e-3;

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
