import { exactMark } from '../marks/exactMark.ts';
import { exactFrameRate } from '../quantities/frameRate.ts';
import { noLight, refuse, type FunctionError } from '../values.ts';
import type { Slot } from './slot.ts';

/** Quantities whose rounded names stand for exact values: engraved marks and frame rates. */
export const meanings: Readonly<Record<string, (value: number) => number>> = {
  fNumber: (value) => exactMark(value),
  frameRate: exactFrameRate,
};

/** The number that is meant, if the parameter takes it; else why not. */
export function inDomain(slot: Slot, written: number): number | FunctionError {
  const { name, parameter } = slot;
  const value = meanings[parameter.quantity]?.(written) ?? written;
  const { domain } = parameter;
  if (!Number.isFinite(value)) return refuse(`${name}: ${parameter.name} is not a number.`);
  if (!domain || domain.allows(value)) return value;
  if (domain.needsLight && value === 0) return noLight(parameter.name);
  return refuse(`${name}: ${parameter.name} must be ${domain.says}, not ${value}.`);
}
