import type { AnyDefinition, BookDefaults, Parameter } from '../../functions/define.ts';
import { words } from '../words/words.ts';

const ofTheBook: Readonly<Record<keyof BookDefaults, string>> = {
  receptor: words.reference.bookReceptor,
  continuousShare: words.reference.bookShare,
  tolerance: words.reference.sheetTolerance,
};

/** What a parameter is when it is left out, in words; undefined where it may not be. */
export function whenLeftOut({ fromBook, default: value, optional }: Parameter): string | undefined {
  if (fromBook) return ofTheBook[fromBook];
  if (typeof value === 'string') return JSON.stringify(value);
  if (value !== undefined) return String(value).toUpperCase();
  return optional && 'none';
}

/**
 * A function as it is called: `EV(f_number, time, iso = 100)`. What may be left out shows what it
 * then is, or `?` where that is nothing; `…` follows what takes further arguments.
 */
export function signatureOf({ name, parameters }: AnyDefinition): string {
  return `${name}(${parameters.map(written).join(', ')})`;
}

function written(parameter: Parameter): string {
  const { name, optional, repeats } = parameter;
  if (optional) return `${name}?`;
  if (repeats) return `${name}…`;
  const value = whenLeftOut(parameter);
  return value === undefined ? name : `${name} = ${value}`;
}
