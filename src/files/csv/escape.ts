/**
 * Texts that other programs would take for a formula, with or without apostrophes before them. The
 * wide signs count as well, and so do the tab and the line end, which some programs skip.
 */
const dangerous = /^'*[=+\-@＝＋－＠\t\r\n]/;

/** A text as it may stand in a table for other programs, which take no NUL; we do not either. */
export function escapedText(text: string): string {
  const told = text.replaceAll('\0', '');
  return dangerous.test(told) ? `'${told}` : told;
}

/** The text that was meant. */
export const unescapedText = (text: string): string =>
  text.startsWith("'") && dangerous.test(text.slice(1)) ? text.slice(1) : text;
