import type { QuantityName } from '../quantities/names.ts';
import { readAs, readLevel } from '../quantities/read.ts';
import { receptors } from '../receptors.ts';
import {
  isBlank,
  isError,
  isMeasured,
  type Argument,
  type FunctionError,
  type Measured,
  type RangeArgument,
  type Value,
} from '../values.ts';
import { inDomain } from './domain.ts';
import { readMeasured } from './measured.ts';
import { waitingFor, wrong, wrongType, type Slot } from './slot.ts';

/** Reads an argument that is no range. */
export function readSingle(
  slot: Slot,
  argument: Exclude<Argument, undefined | RangeArgument>,
): Value | Measured | FunctionError {
  const { parameter } = slot;
  if (isBlank(argument)) return waitingFor(slot, argument.at);
  if (isError(argument)) return argument;
  if (parameter.kinds) return readMeasured(slot, parameter.kinds, argument);
  if (isMeasured(argument)) return readSingle(slot, argument.value);
  if (parameter.quantity === 'anything') return argument;
  if (parameter.quantity === 'text') return String(argument);
  if (parameter.quantity === 'truth') {
    return typeof argument === 'boolean' ? argument : wrongType(slot, 'TRUE or FALSE', argument);
  }
  if (typeof argument === 'boolean') return wrongType(slot, 'a number', argument);
  const value = typeof argument === 'number' ? argument : readText(slot, argument);
  return typeof value === 'number' ? inDomain(slot, value) : value;
}

function readText(slot: Slot, text: string): number | FunctionError {
  const { quantity, name } = slot.parameter;
  if (quantity === 'receptor') {
    return (
      receptors.get(text.trim().toLowerCase()) ??
      wrong(slot, `must be "dome", "flat" or a constant such as 340, not "${text}".`)
    );
  }
  const { writing } = slot.settings;
  const reading =
    quantity === 'level'
      ? readLevel(text, writing)
      : readAs(quantity as QuantityName, text, writing);
  if (reading.ok) return reading.value;
  return { code: '#VALUE!', message: `${slot.name}: ${name}: ${reading.reason}` };
}
