import Papa from 'papaparse';

/** A table of text as it came, and how it was separated. */
export interface TextTable {
  readonly rows: readonly (readonly string[])[];
  readonly separator: '\t' | ';' | ',';
  /** A semicolon as separator means that the comma is the decimal sign. */
  readonly decimal: '.' | ',';
}

const separators = ['\t', ';', ','] as const;

/**
 * Reads text that separates its columns by tabs, semicolons or commas, quoted or not.
 * Undefined when it is no table: a single column, or lines of different lengths.
 */
export function readTable(text: string): TextTable | undefined {
  const body = text.replace(/^\uFEFF/, '');
  for (const separator of separators) {
    if (!body.includes(separator)) continue;
    const rows = split(body, separator);
    const width = rows[0]?.length ?? 0;
    if (width > 1 && (separator === '\t' || rows.every((row) => row.length === width))) {
      return { rows, separator, decimal: separator === ';' ? ',' : '.' };
    }
  }
  return undefined;
}

/** Rows and cells of text separated by `separator`; empty lines at the end are left out. */
export function split(text: string, separator: string): readonly (readonly string[])[] {
  const { data } = Papa.parse<string[]>(text, { delimiter: separator, skipEmptyLines: false });
  const rows = [...data];
  while (rows.length > 0 && rows.at(-1)?.every((cell) => cell === '')) rows.pop();
  return rows;
}

/**
 * Cells as separated text for other programs; separators, line ends and quotes in a cell are quoted,
 * and between commas whatever else could be taken for a separator.
 */
export function joinTable(rows: readonly (readonly string[])[], separator = '\t'): string {
  const quotes = (cell: unknown) => separator === ',' && /[\t;]/.test(String(cell));
  return Papa.unparse(rows as string[][], { delimiter: separator, newline: '\n', quotes });
}
