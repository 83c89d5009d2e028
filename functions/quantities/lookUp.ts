import { quantityNames } from './names.ts';
import type { QuantityName } from './names.ts';
import type { Unit } from './unit.ts';
import { units } from './units.ts';

export interface Named {
  readonly quantity: QuantityName;
  readonly unit: Unit;
}

/** Where the quantity is known the case of a unit does not matter: `2.4 KW`, `16 a`. */
const inside: ReadonlyMap<QuantityName, ReadonlyMap<string, Unit>> = new Map(
  quantityNames.map((quantity) => [
    quantity,
    new Map(
      units[quantity].units.flatMap((unit) =>
        [...unit.spellings, ...(unit.inside ?? [])].map((spelling): [string, Unit] => [
          spelling.toLowerCase(),
          unit,
        ]),
      ),
    ),
  ]),
);

/** Single letters keep their case where they stand alone (`K`, `m`, `s`), but for these. */
const lettersOfEitherCase = new Set(['w', 'v', 'a']);

const exact = new Map<string, Named>();
const anyCase = new Map<string, Named>();
for (const quantity of quantityNames) {
  for (const unit of units[quantity].units) {
    for (const spelling of unit.spellings) {
      exact.set(spelling, { quantity, unit });
      const lower = spelling.toLowerCase();
      if (lower.length > 1 || lettersOfEitherCase.has(lower)) {
        anyCase.set(lower, { quantity, unit });
      }
    }
  }
}

export function unitInside(quantity: QuantityName, spelling: string): Unit | undefined {
  return inside.get(quantity)?.get(spelling.toLowerCase());
}

export function unitAnywhere(spelling: string): Named | undefined {
  return exact.get(spelling) ?? anyCase.get(spelling.toLowerCase());
}

/** A unit in front of the number: `ISO 800`, `EV 11`, `Duv +0.001`. */
export function unitBefore(
  text: string,
  quantity?: QuantityName,
): (Named & { readonly rest: string }) | undefined {
  for (const each of quantity === undefined ? quantityNames : [quantity]) {
    for (const unit of units[each].units) {
      for (const spelling of unit.before ?? []) {
        if (text.slice(0, spelling.length).toLowerCase() !== spelling.toLowerCase()) continue;
        const rest = text.slice(spelling.length).trimStart();
        if (/^[\d+.,-]|^\p{No}/u.test(rest)) return { quantity: each, unit, rest };
      }
    }
  }
  return undefined;
}
