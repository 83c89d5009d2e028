import type { AnyDefinition, Parameter } from '../define.ts';
import { isError, isRange, refuse, type Argument, type FunctionError } from '../values.ts';
import { oneKindOfLight } from './kindsOfLight.ts';
import { errorAmong, joined, onlyCell, readRange } from './range.ts';
import { readSingle } from './single.ts';
import type { CallSettings, Slot } from './slot.ts';
import { readTable } from './table.ts';

/**
 * What `run` gets for the arguments of a formula: texts with units read, what was left out filled
 * in, each in its domain. Otherwise the error that the cell shows: one that was handed in, what is
 * wrong, or what is still waited for, in this order.
 */
export function readArguments(
  definition: AnyDefinition,
  args: readonly Argument[],
  settings: CallSettings,
): readonly unknown[] | FunctionError {
  const { name, parameters } = definition;
  const passed = errorAmong(args.map((value) => ({ value })));
  if (passed) return passed;
  if (args.length > parameters.length && !parameters.at(-1)?.repeats) {
    return refuse(`${name} takes ${count(parameters.length)}, not ${args.length}.`, '#VALUE!');
  }
  const read = parameters.map((parameter, index) =>
    readArgument(
      { name, parameter, settings },
      parameter.repeats ? joined(args.slice(index)) : args[index],
    ),
  );
  return (
    errorAmong(read.map((value) => ({ value: isError(value) ? value : undefined }))) ??
    oneKindOfLight(definition, args, settings) ??
    read
  );
}

function count(parameters: number): string {
  if (parameters === 0) return 'no arguments';
  return parameters === 1 ? '1 argument' : `at most ${parameters} arguments`;
}

function readArgument(slot: Slot, given: Argument): unknown {
  const { name, parameter, settings } = slot;
  const argument = given ?? leftOut(parameter, settings);
  if (argument === undefined) {
    return parameter.optional ? undefined : refuse(`${name} needs ${parameter.name}.`, '#VALUE!');
  }
  if (parameter.quantity === 'table') return readTable(slot, argument);
  if (parameter.range) return readRange(slot, argument);
  return readSingle(slot, isRange(argument) ? onlyCell(slot, argument.cells) : argument);
}

export function leftOut(parameter: Parameter, settings: CallSettings): Argument {
  return parameter.fromBook ? settings.book[parameter.fromBook] : parameter.default;
}
