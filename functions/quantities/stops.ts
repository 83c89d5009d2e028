import { readAmount } from './amount.ts';
import type { Reader } from './parsed.ts';

const behind = /^(f-stops?|stops?)? ?(over|under)?$/iu;

/** `+1`, `-2/3`, `1⅓ stops`, and differences in words: `0.7 stop under` is −0.7. */
export const readStops: Reader = (text, settings) => {
  const amount = readAmount(text, { decimal: settings.decimal, small: true });
  const words = behind.exec(amount?.rest ?? '-');
  if (amount === undefined || words === null) return undefined;
  const [, unit, way] = words;
  if (way !== undefined && amount.sign !== '') return undefined;
  const value = way?.toLowerCase() === 'under' ? -amount.value : amount.value;
  return { value: value + 0, unitWritten: unit !== undefined };
};
