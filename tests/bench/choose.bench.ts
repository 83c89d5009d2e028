import { solve } from 'yalps';
import { modelOf } from '../../src/choose/pick/model.ts';
import { programme, type None, type Programmed } from '../../src/choose/pick/programme.ts';
import type { Problem } from '../../src/choose/pick/problem.ts';
import { inOneGo } from '../../src/choose/pick/share.ts';
import { withoutTraces } from '../../src/choose/pick/traces.ts';
import { randomFrom } from '../../src/choose/pick/random.ts';
import type { Row } from './bench.ts';

export const name = 'The cheapest of 50 fixtures for 20 points, three of each, on three circuits';

const [fixtures, points] = [50, 20];
const limit = 20_000;

/**
 * Points in a row, each fixture over its own stretch of them; hire by fives. What is wanted is what
 * some set of them gives, so that there is one.
 */
function problemOf(seed: number): Problem {
  const random = randomFrom(seed);
  const options = Array.from({ length: fixtures }, (_, index) => ({
    name: `fixture ${index}`,
    item: `fixture ${index}`,
    amps: 0.5 + random() * 3,
    cost: 5 * Math.round(2 + random() * 16),
    dimmable: random() < 0.8,
    gives: Array.from({ length: points }, (_, point) => {
      const away = (index * points) / fixtures - point;
      return 500 * Math.exp((-away * away) / 4) * (0.5 + random());
    }),
  }));
  const shares = options.map(({ dimmable }) =>
    random() < 0.35 ? (dimmable ? 0.4 + 0.6 * random() : 1) : 0,
  );
  return {
    options,
    available: new Map(options.map(({ item }) => [item, 3])),
    points: Array.from({ length: points }, (_, index) => ({
      name: `point ${index}`,
      lux: options.reduce((sum, { gives }, at) => sum + (gives[index] ?? 0) * (shares[at] ?? 0), 0),
    })),
    tolerance: 1 / 3,
    circuits: ['blue', 'red', 'bench'].map((circuit) => ({ name: circuit, amps: 25.6 })),
  };
}

const seeds = [1, 2, 3];

const outcome = (found: Programmed | None): string =>
  typeof found === 'string'
    ? `no set: ${found}`
    : `a set for ${found.cost}, ${found.proven ? 'proven the cheapest' : `none below ${found.least}`}`;

const alone = ({ status, result }: { readonly status: string; readonly result: number }): string =>
  Number.isFinite(result) ? `${Math.round(result)}, ${status}` : status;

export function run(): Promise<Row[]> {
  return Promise.resolve(
    seeds.map((seed): Row => {
      const problem = problemOf(seed);
      const begun = performance.now();
      const ours = inOneGo(
        programme(problem, { milliseconds: limit, now: () => performance.now() }),
      );
      const took = performance.now() - begun;
      const bare = performance.now();
      const model = modelOf(withoutTraces(problem), {}, undefined, Infinity);
      const theirs = solve(model, { timeout: limit, maxIterations: Infinity });
      const tookAgainst = performance.now() - bare;
      const proven = theirs.status === 'optimal';
      if (typeof ours === 'string') throw new Error(`Case ${seed}: ${ours}, and there is a set.`);
      if (proven && ours.proven && Math.abs(theirs.result - ours.cost) > 1e-3)
        throw new Error(`Case ${seed}: ${ours.cost} is not ${theirs.result}.`);
      return {
        what: `case ${seed}: ${outcome(ours)}`,
        took,
        against: `the solver alone on the whole programme: ${alone(theirs)}`,
        tookAgainst,
      };
    }),
  );
}
