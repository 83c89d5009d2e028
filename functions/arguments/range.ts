import {
  isBlank,
  isError,
  isRange,
  type Argument,
  type FunctionError,
  type Measured,
  type RangeCell,
  type Value,
} from '../values.ts';
import { readSingle } from './single.ts';
import { waitingFor, wrong, type Slot } from './slot.ts';

/** Reads the cells with a number in them, skipping blanks; a text is an error that names its place. */
export function readRange(
  slot: Slot,
  argument: Exclude<Argument, undefined>,
): readonly (Value | Measured)[] | FunctionError {
  if (!isRange(argument)) {
    const single = readSingle(slot, argument);
    return isError(single) ? single : [single];
  }
  const failed = errorAmong(argument.cells);
  if (failed) return failed;
  const values: (Value | Measured)[] = [];
  for (const { value, at } of argument.cells) {
    if (isBlank(value)) continue;
    if (typeof value === 'string' && at !== undefined) {
      return wrong(slot, `has the text "${value}" in ${at}, where a number is wanted.`);
    }
    const read = readSingle(slot, value);
    if (isError(read)) return placed(read, at);
    values.push(read);
  }
  return values.length > 0 ? values : waitingFor(slot, firstPlace(argument.cells));
}

/** A range of one cell where a single value is wanted stands for that cell. */
export function onlyCell(slot: Slot, cells: readonly RangeCell[]): RangeCell['value'] {
  const [only] = cells;
  return cells.length === 1 && only ? only.value : wrong(slot, 'takes one cell, not a range.');
}

/** Several arguments in a row taken as one range; texts among them are read like any argument. */
export function joined(args: readonly Argument[]): Argument {
  const given = args.filter((argument) => argument !== undefined);
  if (given.length <= 1) return given[0];
  return {
    cells: given.flatMap((argument): readonly RangeCell[] =>
      isRange(argument) ? argument.cells : [{ value: argument }],
    ),
  };
}

/** What is broken comes before what is only missing. */
export function errorAmong(cells: readonly { value: Argument }[]): FunctionError | undefined {
  const errors = cells.map(({ value }) => value).filter(isError);
  return errors.find(({ waiting }) => !waiting) ?? errors[0];
}

function placed(error: FunctionError, at: string | undefined): FunctionError {
  if (at === undefined) return error;
  const sentence = error.message.replace(/\.$/, '');
  return { ...error, message: `${sentence} (${at})${error.quiet ? '' : '.'}` };
}

function firstPlace([first]: readonly RangeCell[]): string | undefined {
  return first && isBlank(first.value) ? first.value.at : first?.at;
}
