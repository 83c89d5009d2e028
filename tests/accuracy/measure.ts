import type { Decimal } from 'decimal.js';
import type { AnyDefinition } from '../../functions/define.ts';
import type { Ephemeris } from '../../functions/ephemeris.ts';
import { exampleFixtures } from '../../functions/fixture/exampleFixtures.ts';
import type { Fixtures } from '../../functions/fixture/fixture.ts';
import { exampleSpectra } from '../../functions/spectrum/exampleSpectra.ts';
import type { Spectra } from '../../functions/spectrum/spectra.ts';
import { isError, type FunctionError, type Value } from '../../functions/values.ts';
import { ephemeris } from '../../src/engine/ephemeris.ts';
import { sampleFor } from '../unit/functions/support/samples.ts';
import { Exact, workOutExactly } from './decimal.ts';
import { references } from './references/index.ts';

export type Chance = () => number;
type Given = Value | Decimal | undefined;

/** Another way to the result of a function, which shares nothing with the function but its facts. */
export interface Reference {
  /** What the result is held against, in words. */
  readonly against: string;
  /** The error that is promised. */
  readonly limit: number;
  /** What the error is counted in; without it, in the result’s own unit over max(1, |result|). */
  readonly unit?: string;
  /** Each try takes long: only one in so many samples. */
  readonly oneIn?: number;
  /** Arguments to try, where those from where the trade lives are not the ones that are promised. */
  sample?(chance: Chance): unknown[];
  /** The result, or undefined where these arguments have none. */
  work(handed: never): Given;
  /** How far off, where it is not a plain difference. */
  off?(ours: number, theirs: number, handed: never): number;
}

/** By function; CCT has two promises. */
export type References = Readonly<Record<string, Reference | readonly Reference[]>>;

export interface Accuracy {
  readonly name: string;
  readonly against: string;
  readonly samples: number;
  readonly worst: number;
  readonly limit: number;
  readonly unit: string;
  /** The arguments of the worst error. */
  readonly at: readonly unknown[];
}

const digits: Omit<Reference, 'work'> = { against: 'its equation with fifty digits', limit: 1e-12 };

/** The other ways to a function’s result; none where it gives words that no figure can be held to. */
export function referencesOf(definition: AnyDefinition): readonly Reference[] {
  const written = references[definition.name];
  if (written) return [written].flat();
  if (typeof definition.formula !== 'string') return [];
  return [{ ...digits, work: (handed: readonly unknown[]) => workOutExactly(definition, handed) }];
}

/** The worst error over random samples; every one that the function refuses is drawn again. */
export function measure(
  definition: AnyDefinition,
  reference: Reference,
  samples: number,
  chance: Chance,
): Accuracy {
  const { against, limit, unit = '', oneIn = 1 } = reference;
  const wanted = Math.max(1, Math.round(samples / oneIn));
  let [worst, found] = [0, 0];
  let at: readonly unknown[] = [];
  for (let tries = 0; found < wanted; tries += 1) {
    if (tries > 100 * wanted + 100) throw new Error(`${definition.name} refuses its own samples.`);
    const handed = reference.sample?.(chance) ?? sampleFor(definition, chance);
    const ours = answer(definition, handed);
    if (isError(ours)) continue;
    const theirs = reference.work(handed as never);
    if (theirs === undefined) continue;
    found += 1;
    const off = difference(ours, theirs, reference, handed);
    if (off > worst || Number.isNaN(off)) [worst, at] = [off, handed];
  }
  return { name: definition.name, against, samples: found, worst, limit, unit, at };
}

function answer(definition: AnyDefinition, handed: readonly unknown[]): Value | FunctionError {
  type Run = (...all: unknown[]) => Value | FunctionError;
  type RunUnder = (sky: Ephemeris, ...all: unknown[]) => Value | FunctionError;
  type RunWith = (fixtures: Fixtures, ...all: unknown[]) => Value | FunctionError;
  type RunFrom = (spectra: Spectra, ...all: unknown[]) => Value | FunctionError;
  const { run, runUnder, runWith, runFrom } = definition as unknown as {
    run: Run;
    runUnder?: RunUnder;
    runWith?: RunWith;
    runFrom?: RunFrom;
  };
  if (runWith) return runWith(exampleFixtures, ...handed);
  if (runFrom) return runFrom(exampleSpectra, ...handed);
  return runUnder ? runUnder(ephemeris, ...handed) : run(...handed);
}

/** Words and truths are either the same or as wrong as can be. */
function difference(
  ours: Value,
  theirs: Exclude<Given, undefined>,
  { off, unit }: Reference,
  handed: readonly unknown[],
): number {
  if (typeof ours !== 'number') return ours === theirs ? 0 : Infinity;
  if (typeof theirs === 'string' || typeof theirs === 'boolean') return Infinity;
  if (off) return off(ours, Number(theirs), handed as never);
  const error = new Exact(ours).minus(theirs).abs();
  const scale = unit === undefined ? Exact.max(1, new Exact(theirs).abs()) : 1;
  return error.div(scale).toNumber();
}
