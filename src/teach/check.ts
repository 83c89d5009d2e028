import type { QuantityName } from '../../functions/quantities/names.ts';
import type { Check, Tolerance } from '../book/exercises.ts';
import { sha256 } from '../files/photometric/sha256.ts';
import { closeWithin, stopsOf, type Answer, type State } from './judge.ts';

/** Marks in a stop that answers are checked on. */
const parts = 3;

/** Quantities that people answer in marks a third of a stop apart. */
const discrete: readonly (QuantityName | undefined)[] = ['fNumber', 'stops', 'iso', 'time'];

/** Only an answer on marks can be checked without its being in the file. */
export const isDiscrete = ({ kind, by }: Tolerance, quantity: QuantityName | undefined): boolean =>
  discrete.includes(quantity) &&
  by * 2 * parts >= 1 - 1e-9 &&
  (kind === 'stops' || quantity === 'stops');

/** The marks that are right or close, with how far each is off; 0 for those that are right. */
export function marksAround(
  tolerance: Tolerance,
  { quantity, value }: Answer,
): readonly { readonly index: number; readonly off: number }[] {
  const reach = closeWithin * tolerance.by;
  const middle = stopsOf(quantity, value);
  const from = Math.ceil((middle - reach) * parts - 1e-9);
  const to = Math.floor((middle + reach) * parts + 1e-9);
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, step) => {
    const index = from + step;
    const off = index / parts - middle;
    const right = Math.abs(off) <= tolerance.by + 1e-9;
    return { index, off: right ? 0 : Math.round(off * parts) / parts || Math.sign(off) / parts };
  });
}

export const digestOf = (salt: string, index: number): string =>
  sha256([salt, String(index)].join(' / '));

/** What a check on the spot says of an answer; it knows the digests only. */
export function checked(
  { salt, marks }: Check,
  quantity: QuantityName | undefined,
  given: number,
): { readonly state: State; readonly off?: number } {
  const index = Math.round(stopsOf(quantity, given) * parts);
  const found = marks.find(({ digest }) => digest === digestOf(salt, index));
  if (!found) return { state: 'notYet' };
  return found.off === 0 ? { state: 'right' } : { state: 'close', off: found.off };
}
