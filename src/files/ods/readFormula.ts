import { writeSheetPrefix } from '../../formula/sheetprefix.ts';
import { bareName } from './functions.ts';

const pattern =
  /("(?:[^"]|"")*")|\[((?:'(?:[^']|'')*'|[^\]'])*)\]|([A-Z][A-Z0-9_.]*)(?=\()|([{}])|([;|])|(.)/gisu;

/** Beyond any sheet here: a range as long as this means whole columns. */
const whole = { rows: 1_000_000, columns: /^(?:XFD|AMJ)$/i };

/** An OpenFormula text, with its namespace, in A1 form with a `=`; undefined for another language. */
export function formulaIn(stored: string): string | undefined {
  const body = /^(?:(?:of|oooc|msoxl):)?=(.*)$/su.exec(stored)?.[1];
  if (body === undefined) return undefined;
  let lists = 0;
  const text = body.replace(
    pattern,
    (all, quoted, reference, name, brace, separator: string | undefined) => {
      if (reference !== undefined) return referenceIn(String(reference));
      if (name !== undefined) return bareName(String(name));
      if (brace !== undefined) lists += brace === '{' ? 1 : -1;
      if (separator === undefined) return String(quoted ?? all);
      if (lists === 0) return separator === ';' ? ',' : separator;
      return separator === ';' ? ',' : ';';
    },
  );
  return `=${text}`;
}

/** `$Walk.$A$2:.B3` as `Walk!$A$2:B3`. */
export function referenceIn(text: string): string {
  const ends = text.match(/(?:'(?:[^']|'')*'|[^:'])+/gu) ?? [];
  const [from, to] = ends.map(endIn);
  if (!from) return '#REF!';
  const prefix = from.sheet === '' ? '' : writeSheetPrefix(from.sheet);
  if (!to) return prefix + from.at;
  return prefix + (wholeLines(from.at, to.at) ?? `${from.at}:${to.at}`);
}

function endIn(text: string): { sheet: string; at: string } {
  const match = /^(?:\$?('(?:[^']|'')*'|[^.']*))?\.(.*)$/su.exec(text);
  const [, named = '', at = text] = match ?? [];
  const sheet = named.startsWith("'") ? named.slice(1, -1).replaceAll("''", "'") : named;
  return { sheet, at };
}

function wholeLines(from: string, to: string): string | undefined {
  const [first, last] = [from, to].map((end) => /^(\$?[A-Z]+)(\$?)(\d+)$/i.exec(end));
  if (!first || !last) return undefined;
  const [, left = '', , top] = first;
  const [, right = '', , bottom] = last;
  if (top === '1' && Number(bottom) >= whole.rows) return `${left}:${right}`;
  const across = left.replace('$', '') === 'A' && whole.columns.test(right.replace('$', ''));
  return across ? `${first[2] ?? ''}${top ?? ''}:${last[2] ?? ''}${bottom ?? ''}` : undefined;
}
