import type {
  AnyDefinition,
  Example,
  ExampleTable,
  Parameter,
} from '../../../../functions/define.ts';
import {
  blank,
  isError,
  type Argument,
  type Measured,
  type Value,
} from '../../../../functions/values.ts';
import { readArguments } from '../../../../functions/call.ts';
import { settings } from './settings.ts';

type Chance = () => number;

/** An example's arguments as a formula hands them over: lists become ranges, null a blank cell. */
export function argumentsOf({ args }: Example): Argument[] {
  return args.map((argument) => {
    if (isTable(argument)) return tableOf(argument);
    return isList(argument)
      ? { cells: argument.map((value) => ({ value: value ?? { blank: true } })) }
      : argument;
  });
}

type Given = Example['args'][number];

function isTable(argument: Given): argument is ExampleTable {
  return Array.isArray(argument) && Array.isArray(argument[0]);
}

function isList(argument: Given): argument is readonly (number | null)[] {
  return Array.isArray(argument) && !isTable(argument);
}

/** Short rows are filled up with blanks, as cells beside them are. */
function tableOf(rows: ExampleTable): Argument {
  const width = Math.max(...rows.map((row) => row.length));
  const cells = rows.flatMap((row) =>
    Array.from({ length: width }, (_, index) => ({ value: row[index] ?? blank })),
  );
  return { cells, width };
}

/** What `run` and the laws get for random arguments from where the trade lives. */
export function sampleFor(definition: AnyDefinition, chance: Chance): unknown[] {
  return definition.parameters.map((parameter, index) => {
    const one = () => sampleOf(definition, parameter, index, chance);
    if (parameter.optional && chance() < 0.25) return undefined;
    if (!parameter.range || parameter.quantity === 'table') return one();
    return Array.from({ length: 1 + Math.floor(8 * chance()) }, one);
  });
}

function sampleOf(
  definition: AnyDefinition,
  parameter: Parameter,
  index: number,
  chance: Chance,
): Value | Measured {
  if (parameter.quantity === 'truth') return chance() < 0.5;
  const { domain, kinds } = parameter;
  if (!domain) return fromExamples(definition, index, chance);
  const { choices } = domain;
  const chosen = choices?.[Math.floor(chance() * choices.length)];
  const value = chosen ?? between(domain.samples, chance);
  if (!domain.allows(value)) {
    throw new Error(`${definition.name}: ${parameter.name} does not allow its own sample ${value}`);
  }
  const measured = kinds?.[Math.floor(chance() * kinds.length)];
  return measured ? { measured, value } : value;
}

/** Evenly in the ratio where the ends are far apart, and now and then an end itself. */
function between([low, high]: readonly [number, number], chance: Chance): number {
  const place = chance();
  if (place < 1 / 32) return low;
  if (place > 31 / 32) return high;
  return low > 0 && high / low > 10 && chance() < 0.7
    ? low * (high / low) ** place
    : low + (high - low) * place;
}

/** Words have no domain: those of the examples are taken. */
function fromExamples(definition: AnyDefinition, index: number, chance: Chance): Value {
  const { examples } = definition;
  const example = examples[Math.floor(chance() * examples.length)];
  const handed = example && readArguments(definition, argumentsOf(example), settings);
  const value = !handed || isError(handed) ? undefined : handed[index];
  if (value === undefined && !definition.parameters[index]?.optional) {
    throw new Error(`${definition.name}: no example gives argument ${index + 1}`);
  }
  return value as Value;
}
