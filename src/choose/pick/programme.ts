import { solve, type Constraint, type Model } from 'yalps';
import type { Pick, Problem } from './problem.ts';

/** What may be let go, to find out what stands in the way. */
export interface Loosened {
  readonly circuits?: true;
  /** More of an item than there are, each at a price of 1 in place of all other costs. */
  readonly items?: true;
  /** Points may be off, each at a price of 1 for a share of what is wanted. */
  readonly levels?: true;
}

/** Counts that an option must keep to, for the second best. */
export interface Kept {
  readonly option: number;
  readonly atMost?: number;
  readonly atLeast?: number;
}

export interface Programmed extends Pick {
  /** Pieces more than there are, by item; only where items are let go. */
  readonly more: ReadonlyMap<string, number>;
  /** Share of what is wanted by which a point is under (negative) or over. */
  readonly off: readonly number[];
}

type Row = Map<string, number>;

/** A fixture too many costs this much, so that nothing is taken for nothing. */
const trifle = 1e-6;

/**
 * The cheapest set as a mixed-integer programme: whole fixtures on circuits, and a share of light
 * for what can be dimmed. `undefined` where there is none, or none was found in the time.
 */
export function programme(
  problem: Problem,
  milliseconds: number,
  loosened: Loosened = {},
  kept?: Kept,
): Programmed | undefined {
  const { options, points, tolerance } = problem;
  const circuits = loosened.circuits || problem.circuits.length === 0 ? [] : problem.circuits;
  const places = circuits.length === 0 ? [Infinity] : circuits.map(({ amps }) => amps);
  const constraints = new Map<string, Constraint>();
  const variables = new Map<string, Row>();
  const integers: string[] = [];
  const priced = !loosened.items && !loosened.levels;

  for (const index of points.keys()) {
    constraints.set(`low ${index}`, { min: 2 ** -tolerance });
    constraints.set(`high ${index}`, { max: 2 ** tolerance });
    if (!loosened.levels) continue;
    variables.set(
      `under ${index}`,
      new Map([
        [`low ${index}`, 1],
        ['cost', 1],
      ]),
    );
    variables.set(
      `over ${index}`,
      new Map([
        [`high ${index}`, -1],
        ['cost', 1],
      ]),
    );
  }
  for (const [item, count] of problem.available) {
    constraints.set(`item ${item}`, { max: count });
    if (!loosened.items) continue;
    variables.set(
      `more ${item}`,
      new Map([
        [`item ${item}`, -1],
        ['cost', 1],
      ]),
    );
    integers.push(`more ${item}`);
  }
  for (const [place, amps] of places.entries())
    if (amps !== Infinity) constraints.set(`circuit ${place}`, { max: amps });
  for (const [index, option] of options.entries()) {
    constraints.set(`lit ${index}`, option.dimmable ? { max: 0 } : { equal: 0 });
    const light: Row = new Map([[`lit ${index}`, 1]]);
    for (const [at, { lux }] of points.entries()) {
      const share = (option.gives[at] ?? 0) / lux;
      light.set(`low ${at}`, share);
      light.set(`high ${at}`, share);
    }
    variables.set(`light ${index}`, light);
    for (const place of places.keys()) {
      const name = `count ${index} ${place}`;
      integers.push(name);
      variables.set(
        name,
        new Map([
          [`lit ${index}`, -1],
          [`item ${option.item}`, 1],
          [`circuit ${place}`, option.amps],
          [`kept ${index}`, 1],
          ['cost', (priced ? option.cost : 0) + trifle],
        ]),
      );
    }
  }
  if (kept) {
    const { option, atMost, atLeast } = kept;
    constraints.set(`kept ${option}`, {
      ...(atMost !== undefined && { max: atMost }),
      ...(atLeast !== undefined && { min: atLeast }),
    });
  }
  const model: Model = {
    direction: 'minimize',
    objective: 'cost',
    constraints,
    variables,
    integers,
  };
  const solution = solve(model, { timeout: milliseconds, maxIterations: Infinity });
  if (!Number.isFinite(solution.result)) return undefined;
  const values = new Map(solution.variables);
  const of = (name: string) => values.get(name) ?? 0;
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
    proven: solution.status === 'optimal',
    more: new Map(
      [...problem.available.keys()].map((item) => [item, Math.round(of(`more ${item}`))]),
    ),
    off: points.map((_, index) => of(`over ${index}`) - of(`under ${index}`)),
  };
}
