import { words } from '../../../words/words.ts';
import type { Datum, Given, Undrawn } from '../../figure.ts';
import { numberOf } from '../cells.ts';

export interface Choice {
  readonly name: string;
  /** Stops from what is wanted. */
  readonly off: number;
  readonly cost: number;
  /**
   * `best`: no other that fits is both cheaper and as bright. `passed`: one is, or one of the same
   * cost is brighter. `unfit`: it will not do, whatever its light.
   */
  readonly standing: 'best' | 'passed' | 'unfit';
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
      ? [{ name: name.value.trim(), off, cost, fits: fits(inputs['fits']?.[index]?.[0]) }]
      : [];
  });
  if (found.length === 0) return { reason: words.cost.none };
  if (found.length > most) return { reason: words.cost.tooMany(most, found.length) };
  const passed = (one: Found) =>
    found.some(
      (other) =>
        other.fits &&
        ((other.cost < one.cost && other.off >= one.off) ||
          (other.cost === one.cost && other.off > one.off)),
    );
  const choices = found.map((one): Choice => {
    const { name, off, cost } = one;
    return { name, off, cost, standing: !one.fits ? 'unfit' : passed(one) ? 'passed' : 'best' };
  });
  return { choices: choices.toSorted((a, b) => a.cost - b.cost || a.off - b.off), tolerance };
}

interface Found {
  readonly name: string;
  readonly off: number;
  readonly cost: number;
  readonly fits: boolean;
}

/** No or FALSE is a no; an empty cell, or none, is none. */
const fits = (datum: Datum | undefined): boolean =>
  datum?.value !== false && String(datum?.value ?? '').toLowerCase() !== 'no';

/** The cheapest that is enough, if any is. */
export const cheapestEnough = ({ choices, tolerance }: Choices): Choice | undefined =>
  choices.find(({ off, standing }) => standing !== 'unfit' && off >= -tolerance - 1e-9);
