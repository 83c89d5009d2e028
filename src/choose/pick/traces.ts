import type { Problem } from './problem.ts';

/**
 * Less than this share of what is wanted is no light: a hundred fixtures of it are a thousandth of a
 * stop, and a programme with shares from one down to nothing comes out wrong (the light of a lamp
 * far off falls to any small number, and the solver divides by it).
 */
const trace = 1e-5;

/** The same problem without traces of light. */
export const withoutTraces = (problem: Problem): Problem => ({
  ...problem,
  options: problem.options.map((option) => ({
    ...option,
    gives: option.gives.map((lux, at) => (lux < trace * (problem.points[at]?.lux ?? 0) ? 0 : lux)),
  })),
});

/** What rounding may cost, as a share of what is wanted. */
const slack = 1e-4;

/** Whether fixtures at these outputs bring every point within tolerance: summed anew, not solved. */
export function isMet(
  { options, points, tolerance }: Problem,
  counts: readonly number[],
  outputs: readonly number[],
): boolean {
  return points.every(({ lux }, at) => {
    const share = options.reduce((sum, { gives, dimmable }, index) => {
      const output = dimmable ? (outputs[index] ?? 0) : 1;
      return sum + ((counts[index] ?? 0) * output * (gives[at] ?? 0)) / lux;
    }, 0);
    return share >= 2 ** -tolerance - slack && share <= 2 ** tolerance + slack;
  });
}
