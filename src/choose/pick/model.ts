import type { Constraint } from 'yalps';
import type { Problem } from './problem.ts';

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

type Row = Map<string, number>;

/** A fixture too many costs this much, so that nothing is taken for nothing. */
const trifle = 1e-6;

/** The mixed-integer programme of a problem, ready for the solver. */
export interface PickModel {
  readonly direction: 'minimize';
  readonly objective: 'cost';
  readonly constraints: Map<string, Constraint>;
  readonly variables: Map<string, Row>;
  readonly integers: readonly string[];
}

/** Whole fixtures on each place for current, lit by a share; none that draws more than `mostAmps`. */
export function modelOf(
  problem: Problem,
  loosened: Loosened,
  kept: Kept | undefined,
  mostAmps: number,
): PickModel {
  const { options, points, tolerance } = problem;
  const places = placesOf(problem, loosened);
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
    if (option.amps > mostAmps) continue;
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
  return {
    direction: 'minimize',
    objective: 'cost',
    constraints,
    variables,
    integers,
  };
}

/** What each place for current carries; one without end where power is no question. */
export const placesOf = ({ circuits }: Problem, loosened: Loosened): readonly number[] =>
  loosened.circuits || circuits.length === 0 ? [Infinity] : circuits.map(({ amps }) => amps);
