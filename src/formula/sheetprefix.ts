const plainName = /^[A-Za-z_À-ʯ][A-Za-z0-9_À-ʯ]*$/;
const readsAsAddress = /^(?:[A-Za-z]{1,3}\d+|[RrCc]\d*|[Rr]\d*[Cc]\d*|true|false)$/i;

/** `Walk` → `Walk!`, `Ice house` → `'Ice house'!`. Quoted where it could read as something else. */
export function writeSheetPrefix(name: string): string {
  if (plainName.test(name) && !readsAsAddress.test(name)) return `${name}!`;
  return `'${name.replaceAll("'", "''")}'!`;
}

/** Splits `'Ice house'!A1` into the sheet's name and the rest; no sheet for a plain `A1`. */
export function splitSheetPrefix(text: string): { sheet: string | undefined; rest: string } {
  const end = text.lastIndexOf('!');
  if (end < 0) return { sheet: undefined, rest: text };
  const prefix = text.slice(0, end);
  const sheet = prefix.startsWith("'") ? prefix.slice(1, -1).replaceAll("''", "'") : prefix;
  return { sheet, rest: text.slice(end + 1) };
}
