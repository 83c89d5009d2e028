import type { QuantityName } from '../quantities/names.ts';
import { readAny } from '../quantities/read.ts';
import { units } from '../quantities/units.ts';
import { isError, refuse, type FunctionError, type Measured, type Value } from '../values.ts';
import { inDomain } from './domain.ts';
import { wrong, wrongType, type Slot } from './slot.ts';

/** Reads an argument that brings its quantity along; a plain number is the first of the kinds. */
export function readMeasured(
  slot: Slot,
  kinds: readonly [QuantityName, ...QuantityName[]],
  argument: Value | Measured,
): Measured | FunctionError {
  const wanted = kinds.map((kind) => units[kind].words).join(' or ');
  if (typeof argument === 'boolean') return wrongType(slot, wanted, argument);
  const found = measure(slot, kinds[0], argument);
  if (isError(found)) return found;
  const { measured } = found;
  if (!kinds.includes(measured)) {
    return wrong(slot, `must be ${wanted}, not ${units[measured].words}.`);
  }
  const { domain, ...rest } = { ...slot.parameter, quantity: measured };
  // An exposure value below zero is dim light, not less than none.
  const parameter = measured === 'ev' || !domain ? rest : { ...rest, domain };
  const value = inDomain({ ...slot, parameter }, found.value);
  return typeof value === 'number' ? { measured, value } : value;
}

function measure(
  { name, parameter, settings }: Slot,
  first: QuantityName,
  argument: number | string | Measured,
): Measured | FunctionError {
  if (typeof argument === 'number') return { measured: first, value: argument };
  if (typeof argument !== 'string') return argument;
  const reading = readAny(argument, settings.writing);
  return reading.ok
    ? { measured: reading.quantity, value: reading.value }
    : refuse(`${name}: ${parameter.name}: ${reading.reason}`, '#VALUE!');
}
