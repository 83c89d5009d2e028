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
  if (name === '') return 'A name needs at least one letter.';
  if (name.length > maxNameLength) return `A name has at most ${String(maxNameLength)} characters.`;
  if (!wellFormed.test(name))
    return 'A name is made of letters, digits, “_” and “.”, and begins with a letter.';
  if (rowColumn.test(name)) return `“${name}” means a row or a column in a formula.`;
  if (address.test(name)) return `“${name}” reads as the address of a cell.`;
  if (truth.test(name)) return `“${name}” is a value in a formula.`;
  if (isFunction(name)) return `“${name}” is a function.`;
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
  if (name.trim() === '') return { reason: 'A sheet needs a name.' };
  if (name.length > maxSheetNameLength)
    return { reason: `A sheet’s name has at most ${String(maxSheetNameLength)} characters.` };
  if (forbiddenInSheets.test(name))
    return { reason: 'A sheet’s name cannot have [ ] : * ? / or \\ in it.' };
  if (name.startsWith("'") || name.endsWith("'"))
    return { reason: 'A sheet’s name cannot begin or end with an apostrophe.' };
  if (name !== name.trim()) return { reason: 'A sheet’s name cannot begin or end with a blank.' };
  return undefined;
}
