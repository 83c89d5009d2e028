import { solve, type Constraint, type Solution } from 'yalps';
import type { PickModel } from './model.ts';

export interface Branched {
  readonly values: ReadonlyMap<string, number>;
  /** Surely the best, and not merely the best that was found in the time. */
  readonly proven: boolean;
}

type Found = Solution<string>;

/**
 * Solves a programme in whole numbers. One set is found first by rounding; then only what is cheaper
 * by at least `step` is looked for, which passes over whole branches of the search.
 */
export function branched(
  model: PickModel,
  milliseconds: number,
  step: number,
): Branched | undefined {
  const rounded = model.integers.length > mostToRound ? undefined : dive(model);
  const limit = rounded && rounded.result - step * 0.999;
  const constraints = new Map(model.constraints);
  if (limit !== undefined) constraints.set('cost', { max: limit });
  const solution = solve(
    { ...model, constraints },
    { timeout: milliseconds, maxIterations: Infinity },
  );
  const better = Number.isFinite(solution.result) ? solution : undefined;
  const best = better ?? rounded;
  if (!best) return undefined;
  const proven = better ? solution.status === 'optimal' : solution.status === 'infeasible';
  return { values: new Map(best.variables), proven };
}

/** Rounding solves once for each number: with more of them that takes longer than it spares. */
const mostToRound = 120;

const nearWhole = 1e-7;

/**
 * A set found by solving without whole numbers, fixing the number that is nearest to a whole one from
 * below, and solving again; where more of it does no good, less does, or there is none by this way.
 */
function dive({ integers, constraints, variables, ...model }: PickModel): Found | undefined {
  const rows = new Map([...variables].map(([name, row]) => [name, new Map(row)]));
  for (const name of integers) rows.get(name)?.set(`whole ${name}`, 1);
  const fixed = new Map<string, Constraint>();
  const solved = (): Found | undefined => {
    const all = new Map([...constraints, ...fixed]);
    const found = solve({ ...model, constraints: all, variables: rows });
    return found.status === 'optimal' ? found : undefined;
  };
  let found = solved();
  for (let turn = 0; found && turn <= integers.length; turn += 1) {
    const values = new Map(found.variables);
    const open = integers
      .map((name) => ({ name, value: values.get(name) ?? 0 }))
      .filter(({ value }) => Math.abs(value - Math.round(value)) > nearWhole)
      .map((one) => ({ ...one, lacks: Math.ceil(one.value) - one.value }))
      .toSorted((a, b) => a.lacks - b.lacks);
    const [next] = open;
    if (!next) return found;
    fixed.set(`whole ${next.name}`, { min: Math.ceil(next.value) });
    found = solved();
    if (found) continue;
    fixed.set(`whole ${next.name}`, { max: Math.floor(next.value) });
    found = solved();
  }
  return undefined;
}
