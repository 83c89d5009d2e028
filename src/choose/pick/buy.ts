import { solve, type Constraint } from 'yalps';
import type { Problem } from './problem.ts';

/** Light of each option, in full fixtures. */
export type Light = readonly number[];

/** What a fixture more costs and takes by the light of it, for each option. */
export interface Ask {
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

/** Branches that are tried for fixtures which do not dim, before a turn is given up. */
const branches = 100;

/**
 * The cheapest light by the share that reaches every point; what does not dim is bought whole, and
 * what of it stands already stays. Within the store and the circuits by the share only.
 */
export function bought(
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
