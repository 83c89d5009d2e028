import { plainReader } from './arguments/plain.ts';
import { readArguments } from './arguments/readArguments.ts';
import type { CallSettings } from './arguments/slot.ts';
import type { AnyDefinition } from './define.ts';
import type { Ephemeris } from './ephemeris.ts';
import type { Fixtures } from './fixture/fixture.ts';
import type { Spectra } from './spectrum/spectra.ts';
import { isError, refuse, type Argument, type FunctionError, type Value } from './values.ts';

export { readArguments } from './arguments/readArguments.ts';
export type { CallSettings } from './arguments/slot.ts';

type Run = (...handed: unknown[]) => Value | FunctionError;
type RunUnder = (sky: Ephemeris, ...handed: unknown[]) => Value | FunctionError;
type RunWith = (fixtures: Fixtures, ...handed: unknown[]) => Value | FunctionError;
type RunFrom = (spectra: Spectra, ...handed: unknown[]) => Value | FunctionError;
type Remark = (fixtures: Fixtures, ...handed: unknown[]) => string | undefined;
type RemarkFrom = (spectra: Spectra, ...handed: unknown[]) => string | undefined;

/** A function of the library, ready to be called many times. */
export type Prepared = (args: readonly Argument[], settings: CallSettings) => Value | FunctionError;

const prepared = new WeakMap<AnyDefinition, Prepared>();

/**
 * Calls a function of the library with what a formula handed over: reads texts with units,
 * says which argument is missing or out of its domain, and never throws, and never gives NaN.
 */
export function call(
  definition: AnyDefinition,
  args: readonly Argument[],
  settings: CallSettings,
): Value | FunctionError {
  return prepare(definition)(args, settings);
}

/** The same, with the definition looked at once: for the recalculation of a whole book. */
export function prepare(definition: AnyDefinition): Prepared {
  const known = prepared.get(definition);
  if (known) return known;
  const made = bind(definition);
  prepared.set(definition, made);
  return made;
}

function bind(definition: AnyDefinition): Prepared {
  const { name, parameters } = definition;
  const run = definition.run as Run;
  const runUnder = definition.runUnder as RunUnder | undefined;
  const runWith = definition.runWith as RunWith | undefined;
  const runFrom = definition.runFrom as RunFrom | undefined;
  const readers = parameters.map(plainReader);

  function answer(handed: readonly unknown[], { ephemeris, fixtures, spectra }: CallSettings) {
    if (runFrom && spectra) return runFrom(spectra, ...handed);
    if (runUnder && ephemeris) return runUnder(ephemeris, ...handed);
    return runWith && fixtures ? runWith(fixtures, ...handed) : run(...handed);
  }

  function carefully(args: readonly Argument[], settings: CallSettings) {
    const handed = readArguments(definition, args, settings);
    return isError(handed) ? handed : proper(name, answer(handed, settings));
  }

  // One list for all calls: `run` gets its contents, never the list.
  const handed = parameters.map(() => 0);
  return (args, settings) => {
    if (args.length > readers.length) return carefully(args, settings);
    for (let index = 0; index < readers.length; index += 1) {
      const value = readers[index]!(args[index], settings);
      if (Number.isNaN(value)) return carefully(args, settings);
      handed[index] = value;
    }
    return proper(name, answer(handed, settings));
  };
}

/** What a function returned, with the numbers that are none turned into errors. */
function proper(name: string, result: Value | FunctionError): Value | FunctionError {
  if (typeof result !== 'number') return result;
  // Adding zero turns -0 into 0.
  if (Number.isFinite(result)) return result + 0;
  return refuse(`${name}: the result is too large or has no value.`);
}

/** What a standard would have otherwise, though it may well be in use: one sentence an argument. */
export function remarksOn(
  definition: AnyDefinition,
  args: readonly Argument[],
  settings: CallSettings,
): string[] {
  const handed = readArguments(definition, args, settings);
  if (isError(handed)) return [];
  return definition.parameters.flatMap(({ name, usual }, index) => {
    const value = handed[index];
    if (!usual || typeof value !== 'number' || usual.allows(value)) return [];
    return [`A ${name} of ${value} is in use, but ${usual.source} recommends ${usual.says}.`];
  });
}

/** What is to be known of a result that is given all the same, such as a light too near for its data. */
export function cautionOn(
  definition: AnyDefinition,
  args: readonly Argument[],
  settings: CallSettings,
): string | undefined {
  const remark = definition.remark as Remark | undefined;
  const remarkFrom = definition.remarkFrom as RemarkFrom | undefined;
  const { fixtures, spectra } = settings;
  if (!(remark && fixtures) && !(remarkFrom && spectra)) return undefined;
  const handed = readArguments(definition, args, settings);
  if (isError(handed)) return undefined;
  if (remarkFrom && spectra) return remarkFrom(spectra, ...handed);
  return remark && fixtures && remark(fixtures, ...handed);
}
