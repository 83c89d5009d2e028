import { solve, type Constraint } from 'yalps';
import type { Pick, Problem } from './problem.ts';
import { isMet, withoutTraces } from './traces.ts';

/**
 * The same fixtures, each dimmed so that the points come as near to what is wanted as they can: the
 * sum of the shares by which they are off is least.
 */
export function tuned(given: Problem, pick: Pick): Pick {
  const { options, points, tolerance } = withoutTraces(given);
  const constraints = new Map<string, Constraint>();
  const variables = new Map<string, Map<string, number>>();
  for (const at of points.keys()) {
    constraints.set(`point ${at}`, { equal: 1 });
    constraints.set(`range ${at}`, { min: 2 ** -tolerance, max: 2 ** tolerance });
    variables.set(
      `under ${at}`,
      new Map([
        [`point ${at}`, 1],
        ['off', 1],
      ]),
    );
    variables.set(
      `over ${at}`,
      new Map([
        [`point ${at}`, -1],
        ['off', 1],
      ]),
    );
  }
  for (const [index, option] of options.entries()) {
    const count = pick.counts[index] ?? 0;
    constraints.set(`lit ${index}`, option.dimmable ? { max: count } : { equal: count });
    const light = points.flatMap(({ lux }, at): [string, number][] => {
      const share = (option.gives[at] ?? 0) / lux;
      return [
        [`point ${at}`, share],
        [`range ${at}`, share],
      ];
    });
    variables.set(`light ${index}`, new Map([[`lit ${index}`, 1], ...light]));
  }
  const solution = solve({ direction: 'minimize', objective: 'off', constraints, variables });
  if (solution.status !== 'optimal') return pick;
  const values = new Map(solution.variables);
  const outputs = pick.counts.map((count, index) =>
    count === 0 ? 0 : Math.min(1, (values.get(`light ${index}`) ?? 0) / count),
  );
  return isMet(given, pick.counts, outputs) ? { ...pick, outputs } : pick;
}
