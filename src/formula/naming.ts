import { words } from '../words/words.ts';

/** Why a cell or a sheet cannot have this name, and a name near it that would do. */
export interface NameFault {
  readonly reason: string;
  readonly offer?: string;
}

export const maxNameLength = 100;
export const maxSheetNameLength = 31;

/** The letters the calculator knows in names. */
const wellFormed = /^[A-Za-zÀ-ʯ_][A-Za-z0-9À-ʯ_.]*$/;
const address = /^([A-Za-z]+)(\d+)$/;
const rowColumn = /^(?:[Rr]\d*|[Cc]\d*|[Rr]\d*[Cc]\d*)$/;
const truth = /^(?:true|false)$/i;

/**
 * Whether a cell may be called this. A name may not read as anything else in a formula.
 * The offer, where there is one, passes this same check.
 */
export function faultOfName(
  name: string,
  isFunction: (name: string) => boolean,
): NameFault | undefined {
  const reason = reasonAgainst(name, isFunction);
  if (reason === undefined) return undefined;
  const offer = offerFor(name);
  return reasonAgainst(offer, isFunction) === undefined ? { reason, offer } : { reason };
}

function reasonAgainst(name: string, isFunction: (name: string) => boolean): string | undefined {
  if (name === '') return words.formula.nameEmpty;
  if (name.length > maxNameLength) return words.formula.nameTooLong(maxNameLength);
  if (!wellFormed.test(name)) return words.formula.nameForm;
  if (rowColumn.test(name)) return words.formula.nameIsLine(name);
  if (address.test(name)) return words.formula.nameIsAddress(name);
  if (truth.test(name)) return words.formula.nameIsValue(name);
  if (isFunction(name)) return words.formula.nameIsFunction(name);
  return undefined;
}

function offerFor(name: string): string {
  const parts = address.exec(name);
  if (parts) return `${parts[1] ?? ''}_${parts[2] ?? ''}`;
  const cleaned = name.trim().replaceAll(/[^A-Za-z0-9À-ʯ_.]+/g, '_');
  const begun = /^[A-Za-zÀ-ʯ_]/.test(cleaned) ? cleaned : `_${cleaned}`;
  return (begun === name ? `${begun}_` : begun).slice(0, maxNameLength);
}

const forbiddenInSheets = /[[\]:*?/\\\p{Cc}]/u;

/** Whether a sheet may be called this, other sheets apart. */
export function faultOfSheetName(name: string): NameFault | undefined {
  if (name.trim() === '') return { reason: words.formula.sheetUnnamed };
  if (name.length > maxSheetNameLength)
    return { reason: words.formula.sheetNameTooLong(maxSheetNameLength) };
  if (forbiddenInSheets.test(name)) return { reason: words.formula.sheetNameSigns };
  if (name.startsWith("'") || name.endsWith("'"))
    return { reason: words.formula.sheetNameApostrophe };
  if (name !== name.trim()) return { reason: words.formula.sheetNameBlank };
  return undefined;
}
