import { bought, type Ask, type Light } from './buy.ts';
import type { Kept } from './model.ts';
import { pack } from './pack.ts';
import type { Problem } from './problem.ts';
import { randomFrom } from './random.ts';
import { isMet } from './traces.ts';

/** A set that does what is wanted, not surely the cheapest. */
export interface Started {
  readonly counts: readonly number[];
  readonly outputs: readonly number[];
  readonly onCircuits: readonly (readonly number[])[];
  readonly cost: number;
}

const nearWhole = 1e-6;

/** How long sets are tried: so many turns without a better one, and until `until`. */
export interface Effort {
  readonly turns: number;
  readonly until: number;
  now(): number;
}

/**
 * Cheap sets by trial, the cheapest first; none where none was found. Light by the share is bought at
 * a price, and a fixture that gives any stands there whole; the price of light is raised where much
 * of a fixture stays unused, and bought again. From the cheapest set some fixtures are taken away
 * time and again, and what is missing is bought anew. The same problem gives the same sets: chance
 * has a fixed seed. Yields the share of the time that is gone.
 */
export function* start(
  problem: Problem,
  kept: Kept | undefined,
  effort: Effort,
): Generator<number, readonly Started[]> {
  const { options } = problem;
  const began = effort.now();
  const gone = () => Math.min(1, (effort.now() - began) / Math.max(1e-9, effort.until - began));
  const random = randomFrom(1);
  const none = options.map(() => 0);
  const carried = Math.max(0, ...problem.circuits.map(({ amps }) => amps));
  const most = options.map(({ item, amps }, index) => {
    if (problem.circuits.length > 0 && amps > carried) return 0;
    const there = problem.available.get(item) ?? 0;
    return kept?.option === index ? Math.min(there, kept.atMost ?? there) : there;
  });
  const least = none.map((_, index) => (kept?.option === index ? (kept.atLeast ?? 0) : 0));
  const found = new Map<string, Started>();
  let best: Started | undefined;

  /** The whole set of some light, kept if it can be hung; whether it is the cheapest so far. */
  const take = (light: Light): boolean => {
    const counts = light.map((each, index) =>
      Math.max(least[index] ?? 0, Math.ceil(each - nearWhole)),
    );
    const cost = costOf(problem, counts);
    const key = counts.join();
    if (found.has(key) || !there(problem, counts)) return false;
    const onCircuits = pack(problem, counts);
    if (!onCircuits) return false;
    const outputs = counts.map((count, index) =>
      count === 0 ? 0 : Math.min(1, (light[index] ?? 0) / count),
    );
    if (!isMet(problem, counts, outputs)) return false;
    const one = { counts, outputs, onCircuits, cost };
    found.set(key, one);
    const better = !best || cost < best.cost - 1e-9;
    if (better) best = one;
    return better;
  };

  const even = none.map(() => 1);
  const shaken = () => none.map(() => 0.5 + random());
  const all = { standing: least, most, raised: even, chance: even };
  if (!bought(problem, { ...all, byShare: true })) return [];
  let { raised, chance }: Pick<Ask, 'raised' | 'chance'> = all;
  for (let turn = 0; turn < (best ? priced : searched); turn += 1) {
    if (turn > 0 && effort.now() >= effort.until) break;
    yield gone();
    const light = bought(problem, { ...all, raised, chance });
    if (light) take(light);
    const goesOn = light && turn % 8 < 7;
    raised = goesOn ? raisedBy(light, raised) : even;
    if (!goesOn) chance = shaken();
  }
  let idle = 0;
  while (best && idle < effort.turns && effort.now() < effort.until) {
    yield gone();
    const { counts } = best;
    const used = counts.flatMap((count, index) => (count > (least[index] ?? 0) ? [index] : []));
    const away = new Set<number>();
    const many = Math.min(used.length, 1 + Math.floor(random() * 4));
    while (away.size < many) away.add(used[Math.floor(random() * used.length)] ?? 0);
    const standing = counts.map((count, index) => (away.has(index) ? count - 1 : count));
    const narrowed = most.map((each, index) =>
      away.has(index) && random() < 0.8 ? (standing[index] ?? 0) : each,
    );
    let rise: readonly number[] = even;
    const luck = shaken();
    idle += 1;
    for (let again = 0; again < 3 && many > 0; again += 1) {
      const light = bought(problem, { standing, most: narrowed, raised: rise, chance: luck });
      if (!light) break;
      if (take(light)) idle = 0;
      rise = raisedBy(
        light.map((each, index) => Math.max(0, each - (standing[index] ?? 0))),
        rise,
      );
    }
    if (many === 0) break;
  }
  return [...found.values()].toSorted((a, b) => a.cost - b.cost);
}

/** Turns in which the price of light finds its way, before the cheapest set is worked on. */
const priced = 10;

/** Turns as long as there is no set at all. */
const searched = 100;

const costOf = ({ options }: Problem, counts: readonly number[]): number =>
  counts.reduce((sum, count, index) => sum + count * (options[index]?.cost ?? 0), 0);

/** Whether the store has as many. */
function there({ options, available }: Problem, counts: readonly number[]): boolean {
  const left = new Map(available);
  for (const [index, count] of counts.entries()) {
    const item = options[index]?.item ?? '';
    left.set(item, (left.get(item) ?? 0) - count);
  }
  return [...left.values()].every((each) => each >= 0);
}

/** A whole fixture for a share of its light makes that light dearer. */
const raisedBy = (light: Light, before: readonly number[]): readonly number[] =>
  light.map((each, index) =>
    each > nearWhole ? Math.ceil(each - nearWhole) / each : (before[index] ?? 1),
  );
