import type { AnyDefinition, BookDefaults, Parameter } from './define.ts';
import { exactMark } from './marks/exactMark.ts';
import { exactFrameRate } from './quantities/frameRate.ts';
import { readAny, readAs, readLevel } from './quantities/read.ts';
import type { QuantityName } from './quantities/names.ts';
import type { WritingSettings } from './quantities/settings.ts';
import { units } from './quantities/units.ts';
import { receptors } from './receptors.ts';
import {
  isBlank,
  isError,
  isMeasured,
  isRange,
  refuse,
  type Argument,
  type FunctionError,
  type Measured,
  type RangeCell,
  type Value,
} from './values.ts';

export interface CallSettings {
  readonly writing: WritingSettings;
  readonly book: BookDefaults;
}

/**
 * Calls a function of the library with what a formula handed over: reads texts with units,
 * says which argument is missing or out of its domain, and never throws, and never gives NaN.
 */
export function call(
  definition: AnyDefinition,
  args: readonly Argument[],
  settings: CallSettings,
): Value | FunctionError {
  const { parameters } = definition;
  const passed = args.find(firmError) ?? args.find(isError);
  if (passed !== undefined) return passed as FunctionError;
  const last = parameters[parameters.length - 1];
  if (args.length > parameters.length && !last?.repeats) {
    return refuse(
      `${definition.name} takes ${count(parameters.length)}, not ${args.length}.`,
      '#VALUE!',
    );
  }
  const handed: unknown[] = [];
  let waiting: FunctionError | undefined;
  for (const [index, parameter] of parameters.entries()) {
    const given = parameter.repeats ? joined(args.slice(index)) : args[index];
    const read = readArgument(definition.name, parameter, given, settings);
    if (!isError(read)) handed.push(read);
    else if (!read.waiting) return read;
    else waiting ??= read;
  }
  if (waiting) return waiting;
  return proper(
    definition.name,
    (definition.run as (...all: unknown[]) => Value | FunctionError)(...handed),
  );
}

function firmError(argument: Argument): boolean {
  return isError(argument) && !argument.waiting;
}

function count(parameters: number): string {
  return parameters === 1 ? '1 argument' : `at most ${parameters} arguments`;
}

/** What a function returned, with the numbers that are none turned into errors. */
function proper(name: string, result: Value | FunctionError): Value | FunctionError {
  if (typeof result !== 'number') return result;
  if (Number.isFinite(result)) return result === 0 ? 0 : result;
  return refuse(`${name}: the result is too large or has no value.`);
}

function readArgument(
  name: string,
  parameter: Parameter,
  given: Argument,
  settings: CallSettings,
): unknown {
  const argument = given === undefined ? leftOut(parameter, settings) : given;
  if (argument === undefined) {
    return parameter.optional ? undefined : refuse(`${name} needs ${parameter.name}.`, '#VALUE!');
  }
  if (parameter.range) return readRange(name, parameter, argument, settings);
  if (isRange(argument)) {
    const [only] = argument.cells;
    return argument.cells.length === 1 && only
      ? readCell(name, parameter, only, settings)
      : refuse(`${name}: ${parameter.name} takes one cell, not a range.`, '#VALUE!');
  }
  return readSingle(name, parameter, argument, settings);
}

function leftOut(parameter: Parameter, settings: CallSettings): Argument {
  return parameter.fromBook ? settings.book[parameter.fromBook] : parameter.default;
}

function readCell(name: string, parameter: Parameter, cell: RangeCell, settings: CallSettings) {
  return isError(cell.value) ? cell.value : readSingle(name, parameter, cell.value, settings);
}

function readSingle(
  name: string,
  parameter: Parameter,
  argument: Exclude<Argument, undefined>,
  settings: CallSettings,
): Value | Measured | FunctionError {
  if (isBlank(argument)) return waitingFor(parameter, argument.at);
  if (isError(argument)) return argument;
  if (isRange(argument))
    return refuse(`${name}: ${parameter.name} takes one cell, not a range.`, '#VALUE!');
  if (parameter.kinds) return readMeasured(name, parameter, parameter.kinds, argument, settings);
  if (isMeasured(argument)) return readSingle(name, parameter, argument.value, settings);
  if (parameter.quantity === 'anything') return argument;
  if (parameter.quantity === 'truth') {
    return typeof argument === 'boolean'
      ? argument
      : wrongType(name, parameter, 'TRUE or FALSE', argument);
  }
  if (parameter.quantity === 'text') return String(argument);
  if (typeof argument === 'boolean') return wrongType(name, parameter, 'a number', argument);
  const value =
    typeof argument === 'number' ? argument : readText(name, parameter, argument, settings);
  return typeof value === 'number' ? inDomain(name, parameter, meant(parameter, value)) : value;
}

function readMeasured(
  name: string,
  parameter: Parameter,
  kinds: NonNullable<Parameter['kinds']>,
  argument: Value | Measured,
  settings: CallSettings,
): Measured | FunctionError {
  const wanted = kinds.map((kind) => units[kind].words).join(' or ');
  if (typeof argument === 'boolean') return wrongType(name, parameter, wanted, argument);
  let measured: Measured;
  if (typeof argument === 'string') {
    const reading = readAny(argument, settings.writing);
    if (!reading.ok) return refuse(`${name}: ${parameter.name}: ${reading.reason}`, '#VALUE!');
    measured = { measured: reading.quantity, value: reading.value };
  } else {
    measured = typeof argument === 'number' ? { measured: kinds[0], value: argument } : argument;
  }
  if (!kinds.includes(measured.measured)) {
    const given = units[measured.measured].words;
    return refuse(`${name}: ${parameter.name} must be ${wanted}, not ${given}.`, '#VALUE!');
  }
  const { domain, ...rest } = { ...parameter, quantity: measured.measured };
  // An exposure value below zero is dim light, not less than none.
  const judged = measured.measured === 'ev' || !domain ? rest : { ...rest, domain };
  const value = inDomain(name, judged, meant(judged, measured.value));
  return typeof value === 'number' ? { ...measured, value } : value;
}

/** Engraved marks and rounded frame rates stand for their exact values. */
function meant(parameter: Parameter, value: number): number {
  if (parameter.quantity === 'fNumber') return exactMark(value);
  if (parameter.quantity === 'frameRate') return exactFrameRate(value);
  return value;
}

function readText(
  name: string,
  parameter: Parameter,
  text: string,
  settings: CallSettings,
): number | FunctionError {
  if (parameter.quantity === 'receptor') {
    return (
      receptors[text.trim().toLowerCase()] ??
      refuse(
        `${name}: ${parameter.name} must be "dome", "flat" or a constant such as 340, not "${text}".`,
        '#VALUE!',
      )
    );
  }
  const reading =
    parameter.quantity === 'level'
      ? readLevel(text, settings.writing)
      : readAs(parameter.quantity as QuantityName, text, settings.writing);
  return reading.ok
    ? reading.value
    : refuse(`${name}: ${parameter.name}: ${reading.reason}`, '#VALUE!');
}

function inDomain(name: string, parameter: Parameter, value: number): number | FunctionError {
  const { domain } = parameter;
  if (!Number.isFinite(value)) return refuse(`${name}: ${parameter.name} is not a number.`);
  if (!domain || domain.allows(value)) return value;
  if (domain.needsLight && value === 0) {
    return { code: '#NUM!', message: `no light at ${parameter.name}`, quiet: true };
  }
  return refuse(`${name}: ${parameter.name} must be ${domain.says}, not ${value}.`);
}

function readRange(
  name: string,
  parameter: Parameter,
  argument: Exclude<Argument, undefined>,
  settings: CallSettings,
): readonly (Value | Measured)[] | FunctionError {
  if (!isRange(argument)) {
    const single = readSingle(name, parameter, argument, settings);
    return isError(single) ? single : [single];
  }
  const failed =
    argument.cells.find(({ value }) => isError(value) && !value.waiting) ??
    argument.cells.find(({ value }) => isError(value));
  if (failed) return failed.value as FunctionError;
  const values: (Value | Measured)[] = [];
  for (const { value, at } of argument.cells) {
    if (isBlank(value)) continue;
    if (typeof value === 'string' && at !== undefined) {
      return refuse(
        `${name}: ${parameter.name} has the text "${value}" in ${at}, where a number is wanted.`,
        '#VALUE!',
      );
    }
    const read = readSingle(name, parameter, value, settings);
    if (isError(read)) return placed(read, at);
    values.push(read);
  }
  return values.length > 0
    ? values
    : waitingFor(parameter, argument.cells[0] && blankAt(argument.cells[0]));
}

function placed(error: FunctionError, at: string | undefined): FunctionError {
  return at === undefined
    ? error
    : { ...error, message: `${error.message.replace(/\.$/, '')} (${at})${error.quiet ? '' : '.'}` };
}

function blankAt(cell: RangeCell): string | undefined {
  return isBlank(cell.value) ? cell.value.at : cell.at;
}

/** Several arguments in a row taken as one range; texts among them are read like any argument. */
function joined(args: readonly Argument[]): Argument {
  if (args.length <= 1) return args[0];
  return {
    cells: args.flatMap((argument): readonly RangeCell[] =>
      argument === undefined ? [] : isRange(argument) ? argument.cells : [{ value: argument }],
    ),
  };
}

function waitingFor(parameter: Parameter, at: string | undefined): FunctionError {
  const where = at === undefined ? '' : ` (${at})`;
  return { code: '#N/A', message: `waiting for ${parameter.name}${where}`, waiting: true };
}

function wrongType(
  name: string,
  parameter: Parameter,
  wanted: string,
  given: Value,
): FunctionError {
  return refuse(
    `${name}: ${parameter.name} must be ${wanted}, not ${JSON.stringify(given)}.`,
    '#VALUE!',
  );
}
