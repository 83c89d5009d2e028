import type { QuantityName } from '../../functions/quantities/names.ts';
import { isPlain, isWords, sharesOfSomething } from './algebra.ts';
import { alike, plainNumbers } from './dimensions.ts';
import { isCompound, type Kind } from './kinds.ts';

/** Whether something may be handed to who wants a quantity. In doubt it may. */
export function fits(wanted: QuantityName, given: Kind): boolean {
  if (given === undefined || given === 'any' || given === wanted) return true;
  if (isWords(wanted)) return isWords(given);
  if (isPlain(given)) return true;
  if (wanted === 'number')
    return given === 'truth' || sharesOfSomething.has(given) || given in plainNumbers;
  if (isCompound(given)) return alike(wanted, given);
  // A ratio of two levels is a factor or a share; a share may say how large an image is.
  return given === 'ratio'
    ? sharesOfSomething.has(wanted)
    : wanted === 'ratio' && sharesOfSomething.has(given);
}
