import type { AnyDefinition } from '../define.ts';
import type { QuantityName } from '../quantities/names.ts';
import { readLevel } from '../quantities/read.ts';
import { units } from '../quantities/units.ts';
import { isRange, refuse, type Argument, type FunctionError } from '../values.ts';
import type { CallSettings } from './slot.ts';

/**
 * Levels that are held against each other must be of one kind: lux never meets candela per square
 * metre. Only texts with a unit tell their kind here; for cells the unit check does.
 */
export function oneKindOfLight(
  { name, parameters }: AnyDefinition,
  args: readonly Argument[],
  { writing }: CallSettings,
): FunctionError | undefined {
  let first: { readonly kind: QuantityName; readonly of: string } | undefined;
  for (const [index, argument] of args.entries()) {
    const parameter = parameters[Math.min(index, parameters.length - 1)];
    if (parameter?.quantity !== 'level') continue;
    for (const text of textsIn(argument)) {
      const reading = readLevel(text, writing);
      if (!reading.ok || !reading.unitWritten) continue;
      first ??= { kind: reading.quantity, of: parameter.name };
      if (reading.quantity === first.kind) continue;
      const [wanted, given] = [units[first.kind].words, units[reading.quantity].words];
      return refuse(
        `${name}: ${parameter.name} must be ${wanted} like ${first.of}, not ${given}.`,
        '#VALUE!',
      );
    }
  }
  return undefined;
}

function textsIn(argument: Argument): readonly string[] {
  if (typeof argument === 'string') return [argument];
  return isRange(argument) ? argument.cells.flatMap(({ value }) => textsIn(value)) : [];
}
