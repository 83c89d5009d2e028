import type { Exercise, MistakeKind } from '../book/exercises.ts';

/** A mistake as its author writes it: what comes out when it is made. */
export interface PlannedMistake {
  readonly kind: MistakeKind;
  readonly formula: string;
  /** In own words, for a mistake of no other kind. */
  readonly says?: string;
}

export interface PlannedQuestion {
  /** The answer cell: `B9`. What it measures is the cell’s own quantity. */
  readonly at: string;
  readonly text: string;
  /** `1/6 stop`, `2 %` of the answer, or an amount of what the answer cell measures: `50 K`. */
  readonly tolerance: string;
  readonly points: number;
  readonly hint?: string;
  /** With formulas in braces: `From {B2} to {B3} are {FSTOPS(B2,B3)}.` */
  readonly solution?: string;
  readonly expected: string;
  readonly mistakes: readonly PlannedMistake[];
}

export interface PlannedGiven {
  readonly at: string;
  /** A list, `f/2; f/2.8; f/4`, or a range, `200 lx to 2000 lx, step 100 lx`. */
  readonly draw: string;
}

/** An exercise as its author writes it, in addresses of the sheet and texts as one types them. */
export interface PlannedExercise {
  readonly level: Exercise['level'];
  readonly onTheSpot: boolean;
  readonly closeEarns: number;
  readonly givens: readonly PlannedGiven[];
  readonly conditions: readonly string[];
  readonly questions: readonly PlannedQuestion[];
}
