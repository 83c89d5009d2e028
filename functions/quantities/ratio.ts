import { readAmount } from './amount.ts';
import { readWithUnits } from './withUnits.ts';
import type { Reader } from './parsed.ts';

/** `4:1`, `3.2 to 1`, `4`. */
export const readRatio: Reader = (text, settings) => {
  const sides = text.split(/ ?: ?| to /u);
  if (sides.length === 1) return readWithUnits('ratio', text, settings);
  const [one, other] = sides.map((side) => readAmount(side, settings));
  if (sides.length !== 2 || one?.rest !== '' || other?.rest !== '') return undefined;
  if (one.sign !== '' || other.sign !== '') return undefined;
  if (other.value === 0) {
    return { reason: `A ratio to nothing has no value; ${text} was given.` };
  }
  return { value: one.value / other.value, unitWritten: true };
};
