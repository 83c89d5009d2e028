import { isError } from '../../functions/values.ts';
import type { CellValue } from '../engine/index.ts';

/** Texts that another program would take for a formula; the full-width sign counts as well. */
const looksLikeFormula = /^[=+\-@＝\t\r\n]/;

/** One line of CSV: numbers in full, a waiting cell empty, an error as its code. */
export function csvLine(values: readonly CellValue[]): string {
  return `${values.map((value) => quoted(written(value))).join(',')}\n`;
}

function written(value: CellValue): string {
  if (value === null) return '';
  if (isError(value)) return value.waiting ? '' : value.code;
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (typeof value === 'number') return String(value);
  return looksLikeFormula.test(value) ? `'${value}` : value;
}

function quoted(text: string): string {
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}
