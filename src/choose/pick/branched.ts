import { solve, type Constraint, type Solution } from 'yalps';
import type { PickModel } from './model.ts';

export interface Branched {
  /** The best there is, or that was found; none where none was. */
  readonly values?: ReadonlyMap<string, number>;
  /** What every set costs at least, as far as that was shown. */
  readonly least: number;
  /** Surely nothing better within the limit. */
  readonly proven: boolean;
}

/** What is looked for, and how long. */
export interface Limits {
  /** What it may cost at most. */
  readonly below: number;
  /** By how much two costs differ at least. */
  readonly step: number;
  /** Time of the clock at which to stop. */
  readonly until: number;
  now(): number;
}

type Found = Solution<string>;

/**
 * Solves a programme in whole numbers. What no set can cost rises in strides, each of them the proof
 * that there is none up to there: so much is known even when the time runs out. Yields the share of
 * the time that is gone.
 */
export function* branched(
  model: PickModel,
  { below, step, until, now }: Limits,
): Generator<number, Branched> {
  const began = now();
  const within = (max: number, milliseconds: number): Found => {
    const constraints = new Map(model.constraints);
    if (max !== Infinity) constraints.set('cost', { max });
    return solve(
      { ...model, constraints },
      { timeout: Math.max(1, milliseconds), maxIterations: Infinity },
    );
  };
  const relaxed = solve({ ...model, integers: [] });
  if (relaxed.status === 'infeasible') return { least: Infinity, proven: true };
  let least = relaxed.status === 'optimal' ? relaxed.result : 0;
  if (least > below) return { least, proven: true };
  let stride = below === Infinity ? Infinity : Math.max(step, (below - least) / 4);
  while (stride >= step) {
    yield Math.min(1, (now() - began) / Math.max(1e-9, until - began));
    const max = Math.min(below, least + stride);
    const left = until - now();
    const found = within(max, max < below ? left / 2 : left);
    if (Number.isFinite(found.result)) {
      const proven = found.status === 'optimal';
      return { values: new Map(found.variables), least: proven ? found.result : least, proven };
    }
    const none = found.status === 'infeasible';
    if (none && max === below) return { least, proven: true };
    if (none) least = max;
    else if (stride === Infinity || now() >= until) break;
    stride *= none ? 2 : 0.25;
  }
  return { least, proven: false };
}

/** Rounding solves once for each number: with more of them that takes longer than it spares. */
const mostToRound = 120;

const nearWhole = 1e-7;

/**
 * A set found by solving without whole numbers, fixing the number that is nearest to a whole one from
 * below, and solving again; where more of it does no good, less does, or there is none by this way.
 */
export function rounded({
  integers,
  constraints,
  variables,
  ...model
}: PickModel): Found | undefined {
  if (integers.length > mostToRound) return undefined;
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
