import type { QuantityName } from '../../../functions/quantities/names.ts';
import type { Shape } from '../shown.ts';

export interface Pair {
  readonly label: string;
  readonly text: string;
  readonly quantity: QuantityName | undefined;
}

export interface HandOverPoint {
  readonly label: string;
  readonly wanted: string;
  readonly reading: string;
  readonly meter: string;
  /** As light at the point, whatever camera: what another room is built to. */
  readonly light: string;
  readonly from: string;
  readonly verdicts: readonly { readonly words: string; readonly shape: Shape }[];
  readonly note: string;
}

/** A table of the page: captions, then rows of as many texts. */
export interface Listed {
  readonly captions: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** All that one page says of a set-up, read from the book. */
export interface HandOver {
  readonly book: string;
  readonly place: string;
  readonly purpose: string;
  readonly camera: readonly Pair[];
  readonly ratios: readonly Pair[];
  readonly points: readonly HandOverPoint[];
  readonly rig: Listed;
  /** Where each light of the set plan stands, and what is before it. */
  readonly set: Listed;
  readonly colour: Listed;
  /** What the sheet itself says to look out for. */
  readonly cautions: readonly string[];
  readonly missing: readonly string[];
}
