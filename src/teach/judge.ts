import type { QuantityName } from '../../functions/quantities/names.ts';
import type { MistakeKind, Question, Tolerance } from '../book/exercises.ts';
import { grace } from '../../functions/stops/verdictWords.ts';

/** Up to this many tolerances off is close. */
export const closeWithin = 4;

/** What a question comes to in one variant. */
export interface Answer {
  readonly quantity: QuantityName | undefined;
  /** In the base unit. */
  readonly value: number;
  readonly mistakes: readonly {
    readonly kind: MistakeKind;
    readonly says?: string;
    readonly value: number;
  }[];
}

export type State = 'right' | 'close' | 'notYet' | 'blank';

export interface Judgement {
  readonly state: State;
  /** How far off, measured as the tolerance is: over is positive. */
  readonly off?: number;
  readonly mistake?: Answer['mistakes'][number];
}

/** Where a value stands on the scale of stops of its quantity. */
export function stopsOf(quantity: QuantityName | undefined, value: number): number {
  if (quantity === 'stops' || quantity === 'ev') return value;
  return (quantity === 'fNumber' ? 2 : 1) * Math.log2(value);
}

/** How far an answer is off, measured as the tolerance is. Not a number where there is no telling. */
export function offBy(
  { kind }: Tolerance,
  quantity: QuantityName | undefined,
  given: number,
  expected: number,
): number {
  if (kind === 'absolute') return given - expected;
  if (kind === 'relative') return given / expected - 1;
  return stopsOf(quantity, given) - stopsOf(quantity, expected);
}

const within = (off: number, by: number) => Math.abs(off) <= by * (1 + grace) + grace;

/** Whether two values count as the same answer. */
export const agree = (
  tolerance: Tolerance,
  quantity: QuantityName | undefined,
  one: number,
  other: number,
): boolean => within(offBy(tolerance, quantity, one, other), tolerance.by);

/**
 * Right, close, or not yet; with the mistake that would lead there. A mistake that comes out close
 * is still that mistake.
 */
export function judge(
  { tolerance }: Pick<Question, 'tolerance'>,
  { quantity, value, mistakes }: Answer,
  given: number | undefined,
): Judgement {
  if (given === undefined) return { state: 'blank' };
  const off = offBy(tolerance, quantity, given, value);
  if (within(off, tolerance.by)) return { state: 'right', off };
  const mistake = mistakes.find((one) => agree(tolerance, quantity, given, one.value));
  const far = Number.isFinite(off) ? { off } : {};
  if (mistake) return { state: 'notYet', ...far, mistake };
  return { state: within(off, closeWithin * tolerance.by) ? 'close' : 'notYet', ...far };
}

/** What a judgement earns of the points of its question. */
export function earned(state: State, points: number, closeEarns: number): number {
  if (state === 'right') return points;
  return state === 'close' ? points * closeEarns : 0;
}
