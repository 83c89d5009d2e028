import { words } from '../../../words/words.ts';
import type { Given, Undrawn } from '../../figure.ts';
import { numberOf } from '../cells.ts';

export interface Choice {
  readonly name: string;
  /** Stops from what is wanted. */
  readonly off: number;
  readonly cost: number;
  /** Another one costs less and is as bright, or costs the same and is brighter. */
  readonly passedOver: boolean;
}

export interface Choices {
  /** From the cheapest on. */
  readonly choices: readonly Choice[];
  /** How far short one may be and still be enough. */
  readonly tolerance: number;
}

/** More would be no picture any more. */
const most = 60;

export function readChoices({ inputs, tolerance }: Given): Choices | Undrawn {
  const names = inputs['options'] ?? [];
  const found = names.flatMap(([name], index) => {
    const off = numberOf(inputs['light']?.[index]?.[0]);
    const cost = numberOf(inputs['cost']?.[index]?.[0]);
    return typeof name?.value === 'string' && off !== undefined && cost !== undefined
      ? [{ name: name.value.trim(), off, cost }]
      : [];
  });
  if (found.length === 0) return { reason: words.cost.none };
  if (found.length > most) return { reason: words.cost.tooMany(most, found.length) };
  const choices = found.map((one) => ({
    ...one,
    passedOver: found.some(
      (other) =>
        (other.cost < one.cost && other.off >= one.off) ||
        (other.cost === one.cost && other.off > one.off),
    ),
  }));
  return { choices: choices.toSorted((a, b) => a.cost - b.cost || a.off - b.off), tolerance };
}

/** The cheapest that is enough, if any is. */
export const cheapestEnough = ({ choices, tolerance }: Choices): Choice | undefined =>
  choices.find(({ off }) => off >= -tolerance - 1e-9);
