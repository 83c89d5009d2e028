import { solve, type Constraint } from 'yalps';
import type { Kept } from './model.ts';
import { pack } from './pack.ts';
import type { Problem } from './problem.ts';
import { randomFrom } from './random.ts';

/** A set that does what is wanted, not surely the cheapest. */
export interface Started {
  readonly counts: readonly number[];
  readonly outputs: readonly number[];
  readonly onCircuits: readonly (readonly number[])[];
  readonly cost: number;
}

/** How long sets are tried: so many turns without a better one, and until `until`. */
export interface Effort {
  readonly turns: number;
  readonly until: number;
  now(): number;
}

/** Light of each option, in full fixtures. */
type Light = readonly number[];

/** What a fixture more costs and takes by the light of it, for each option. */
interface Ask {
  /** How many stand there already and cost nothing more. */
  readonly standing: readonly number[];
  /** How many there may be at most. */
  readonly most: readonly number[];
  /** By how much light costs and takes more than its share, since a fixture stands there whole. */
  readonly raised: readonly number[];
  /** Chance in the prices, so that another set is met. */
  readonly chance: readonly number[];
  /** Everything by the share, what does not dim too. */
  readonly byShare?: true;
}

const nearWhole = 1e-6;

/** Branches that are tried for fixtures which do not dim, before a turn is given up. */
const branches = 100;

/**
 * Cheap sets by trial, the cheapest first; none where none was found. Light by the share is bought at a price, and a fixture
 * that gives any stands there whole; the price of light is raised where much of a fixture stays
 * unused, and bought again. From the cheapest set some fixtures are taken away time and again, and
 * what is missing is bought anew. The same problem gives the same sets: chance has a fixed seed.
 */
export function start(
  problem: Problem,
  kept: Kept | undefined,
  effort: Effort,
): readonly Started[] {
  const { options } = problem;
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
    const light = bought(problem, { ...all, raised, chance });
    if (light) take(light);
    const goesOn = light && turn % 8 < 7;
    raised = goesOn ? raisedBy(light, raised) : even;
    if (!goesOn) chance = shaken();
  }
  let idle = 0;
  while (best && idle < effort.turns && effort.now() < effort.until) {
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

/**
 * The cheapest light by the share that reaches every point; what does not dim is bought whole, and
 * what of it stands already stays. Within the store and the circuits by the share only.
 */
function bought(
  problem: Problem,
  { standing, most, raised, chance, byShare }: Ask,
): Light | undefined {
  const { options, points, tolerance, circuits } = problem;
  const constraints = new Map<string, Constraint>();
  const variables = new Map<string, Map<string, number>>();
  const integers: string[] = [];
  const shares = (index: number) =>
    points.map(({ lux }, at) => (options[index]?.gives[at] ?? 0) / lux);
  const stays = options.map(({ dimmable }, index) => (dimmable ? 0 : (standing[index] ?? 0)));
  const lit = stays.reduce(
    (sum, count, index) => shares(index).map((share, at) => (sum[at] ?? 0) + count * share),
    points.map(() => 0),
  );
  for (const [at, light] of lit.entries())
    constraints.set(`point ${at}`, { min: 2 ** -tolerance - light, max: 2 ** tolerance - light });
  const taken = (counts: (option: number) => number) =>
    stays.reduce((sum, count, index) => sum + count * counts(index), 0);
  for (const [item, count] of problem.available) {
    const max = count - taken((index) => (options[index]?.item === item ? 1 : 0));
    constraints.set(`item ${item}`, { max });
  }
  const amps = circuits.reduce((sum, circuit) => sum + circuit.amps, 0);
  if (circuits.length > 0)
    constraints.set('amps', { max: amps - taken((index) => options[index]?.amps ?? 0) });
  for (const [index, option] of options.entries()) {
    const offer = (name: string, count: number, price: number, takes: number) => {
      if (count <= 0) return;
      constraints.set(name, { max: count });
      const light = shares(index).map((share, at): [string, number] => [`point ${at}`, share]);
      const asks: [string, number][] = [
        [name, 1],
        [`item ${option.item}`, takes],
        ['amps', option.amps * takes],
        ['cost', price],
      ];
      variables.set(name, new Map([...light, ...asks]));
      if (!option.dimmable && !byShare) integers.push(name);
    };
    const stands = standing[index] ?? 0;
    if (option.dimmable) offer(`stands ${index}`, stands, 0, 1);
    const takes = raised[index] ?? 1;
    const price = (option.cost + trifle) * takes * (chance[index] ?? 1);
    offer(`more ${index}`, (most[index] ?? 0) - stands, price, takes);
  }
  const { variables: values, result } = solve(
    { direction: 'minimize', objective: 'cost', constraints, variables, integers },
    { maxIterations: branches },
  );
  if (!Number.isFinite(result)) return undefined;
  const of = new Map(values);
  return stays.map(
    (count, index) => count + (of.get(`stands ${index}`) ?? 0) + (of.get(`more ${index}`) ?? 0),
  );
}

/** What costs nothing is not taken for nothing. */
const trifle = 1e-3;
