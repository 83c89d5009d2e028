/** One way to say how much: a symbol, how people spell it, and its size. */
export interface Unit {
  readonly symbol: string;
  /** Base units in one of these, in exact form. */
  readonly factor: number;
  /** What is read where the base unit has its zero; only Fahrenheit needs it. */
  readonly zero?: number;
  /** Spellings that name this quantity wherever they stand. */
  readonly spellings: readonly string[];
  /** Spellings that mean this only where the quantity is known already (`8x`, `2 d`). */
  readonly inside?: readonly string[];
  /** Spellings that stand before the number (`ISO 800`). */
  readonly before?: readonly string[];
}

export interface QuantityUnits {
  /** "illuminance" */
  readonly words: string;
  /** "an illuminance" */
  readonly one: string;
  /** Examples that follow "such as". */
  readonly such: string;
  /** Symbol of the unit in which the number is kept; empty for a bare number. */
  readonly base: string;
  readonly units: readonly Unit[];
  /** The least that can be typed into a cell; a difference from a formula may be lower. */
  readonly least?: 'zero' | 'more than zero';
  /** Never in the thousands, so a single comma or point is always the decimal sign. */
  readonly small?: true;
  /** `1/3` needs no unit here. */
  readonly fractions?: true;
}

export function toBase(unit: Unit, number: number): number {
  return (number - (unit.zero ?? 0)) * unit.factor;
}

export function fromBase(unit: Unit, value: number): number {
  return value / unit.factor + (unit.zero ?? 0);
}
